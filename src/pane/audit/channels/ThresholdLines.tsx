import type { JSX } from 'preact';
import type { ChannelResult } from '../../../audit/model/report.ts';
import { thresholdName, type ThresholdResult } from '../../../audit/model/threshold.ts';
import { capital } from '../../../audit/model/wording.ts';
import { Badge } from './Badge.tsx';
import { asFoundText, exposureText } from './stateText.ts';
import { lineText, panelText, reallyText, remarksOf } from './thresholdText.ts';

/** The thresholds of a channel as they stand now: what each really does, the panel reading, and what that rests on. */
export function ThresholdLines({ channel }: { channel: ChannelResult }): JSX.Element {
  return (
    <ul class="plain-list">
      {channel.thresholds.map((threshold) => (
        <li key={thresholdName(threshold)}>
          <b>{capital(thresholdName(threshold))}</b> <Badge standing={threshold.verdict} />
          <span class="block">{capital(reallyText(channel, threshold))}.</span>
          {linesBelow(channel, threshold).map((line) => (
            <span class="quiet block" key={line}>
              {line}.
            </span>
          ))}
        </li>
      ))}
    </ul>
  );
}

function linesBelow(channel: ChannelResult, threshold: ThresholdResult): string[] {
  const { lines, multiplier } = threshold;
  const rest = [
    multiplier === 1 ? panelText(channel, threshold) : null,
    ...(lines.length > 1 ? lines.map((line) => lineText(channel, line)) : []),
    ...remarksOf(channel, threshold),
    exposureText(channel, threshold),
    asFoundText(channel, channel.asFound, threshold),
  ];
  return rest.filter((line) => line !== null);
}
