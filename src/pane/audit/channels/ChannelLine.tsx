import type { JSX } from 'preact';
import { worstThreshold } from '../../../audit/model/order.ts';
import type { Attention, ChannelResult } from '../../../audit/model/report.ts';
import { thresholdName } from '../../../audit/model/threshold.ts';
import { capital } from '../../../audit/model/wording.ts';
import { Said } from '../../parts/Said.tsx';
import { auditWords, severityNames } from '../auditWords.ts';
import { Badge } from './Badge.tsx';
import { standingOf } from './standing.ts';
import { panelText, reallyText } from './thresholdText.ts';

interface ChannelLineProps {
  readonly channel: ChannelResult;
  /** What needs action of it, gravest first. */
  readonly attention: readonly Attention[];
}

/** One channel of the list: how it stands, tag, where it is, what its worst threshold really does, and the panel reading. */
export function ChannelLine({ channel, attention: [first] }: ChannelLineProps): JSX.Element {
  const where = [channel.machine, channel.location].filter((text) => text !== '').join(', ');
  const standing = standingOf(channel);
  const worst = worstThreshold(channel.thresholds);
  return (
    <>
      <span class="channel-first">
        <Badge standing={standing} />
        {standing === 'within' && first && (
          <span class={`badge severity-${first.severity}`}>
            <b>{severityNames[first.severity]}</b>
          </span>
        )}
        <b class="cut channel-tag">
          <Said text={channel.tag} most={60} />
        </b>
        {where !== '' && (
          <span class="quiet cut">
            <Said text={where} most={80} />
          </span>
        )}
      </span>
      <span class="cut">
        {worst ? `${capital(thresholdName(worst))} ${reallyText(channel, worst)}` : auditWords.noThreshold}
      </span>
      <span class="quiet cut">{(worst && panelText(channel, worst)) ?? auditWords.noPanel}</span>
    </>
  );
}
