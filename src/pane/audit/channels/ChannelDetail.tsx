import type { JSX } from 'preact';
import type { Policy } from '../../../audit/model/policy.ts';
import type { Attention, ChannelResult, AsFoundResult } from '../../../audit/model/report.ts';
import { channelScene } from '../../drawing/channelScene.ts';
import { RecordPart } from '../../drawing/record/RecordPart.tsx';
import { SceneDrawing } from '../../drawing/SceneDrawing.tsx';
import { CellLink } from '../../parts/CellLink.tsx';
import { Said } from '../../parts/Said.tsx';
import { auditMessages } from '../auditMessages.ts';
import { FindingList } from '../results/FindingList.tsx';
import { AttentionList } from '../results/NeedsAction.tsx';
import { StandingHelp } from '../../help/StandingHelp.tsx';
import { Badge } from './Badge.tsx';
import { standingOf } from './standing.ts';
import {
  thresholdName,
  type ThresholdResult,
  type SensitivityResult,
  type ThresholdChange,
} from '../../../audit/model/threshold.ts';
import { capital, amount, percent, verdictWords } from '../../../audit/model/wording.ts';
import { lineText, panelText, reallyText, remarksOf } from './thresholdText.ts';

/** Words of what became of a threshold since it was found. */
const changeWords: Readonly<Record<ThresholdChange, string>> = {
  corrected: 'corrected',
  unchanged: 'unchanged',
  'not judged': 'not compared',
  'still unreachable': `still ${verdictWords.unreachable}`,
  'still late': `still ${verdictWords.late}`,
  'still undetermined': `still ${verdictWords.undetermined}`,
  'still early': `still ${verdictWords.early}`,
  'now unreachable': `now ${verdictWords.unreachable}`,
  'now late': `now ${verdictWords.late}`,
  'now undetermined': `now ${verdictWords.undetermined}`,
  'now early': `now ${verdictWords.early}`,
};

interface ChannelDetailProps {
  readonly channel: ChannelResult;
  /** What needs action of it, gravest first. */
  readonly attention: readonly Attention[];
  readonly policy: Policy;
}

/** One channel as it stands now: what needs action, drawing, thresholds; what was found before; findings and its rows. */
export function ChannelDetail({ channel, attention, policy }: ChannelDetailProps): JSX.Element {
  const scene = channelScene(channel);
  const { source, sensitivity, inputs, asFound, record, findings } = channel;
  const where = [channel.machine, channel.location, channel.kind ?? ''].filter((text) => text !== '');
  return (
    <article class="channel-detail" aria-label={auditMessages.thresholds}>
      <h3>
        <Said text={channel.tag} most={60} /> <Badge standing={standingOf(channel)} />
      </h3>
      <StandingHelp standing={standingOf(channel)} />
      <p class="quiet">
        <Said text={where.join(', ')} most={160} />
      </p>
      {scene ? <SceneDrawing scene={scene} /> : <p class="quiet">{auditMessages.noDrawing}</p>}
      <h4>{auditMessages.next}</h4>
      {attention.length > 0 ? (
        <AttentionList attention={attention} ofOne />
      ) : (
        <p>{auditMessages.nothingToDo}</p>
      )}
      <h4>{auditMessages.thresholdsNow(channel.state)}</h4>
      <Readings text={readingsText(sensitivity, inputs.gapVoltage)} />
      <ThresholdLines channel={channel} />
      {asFound && (
        <>
          <h4>
            {auditMessages.wasFound} <Badge standing={asFound.verdict} />
          </h4>
          <Readings text={readingsText(asFound.sensitivity, asFound.gapVoltage)} />
        </>
      )}
      {record && <RecordPart channel={channel} record={record} policy={policy} />}
      <h4>{auditMessages.findings}</h4>
      <FindingList findings={findings} none={auditMessages.noFindings} />
      <h4>{auditMessages.rows}</h4>
      <p>
        {auditMessages.channelRow}:{' '}
        <CellLink sheet={source.channels.sheet} row={source.channels.row} column="" />
        {source.settings && (
          <>
            , {auditMessages.settingsRow}:{' '}
            <CellLink sheet={source.settings.sheet} row={source.settings.row} column="" />
          </>
        )}
      </p>
    </article>
  );
}

function Readings({ text }: { text: string | null }): JSX.Element | null {
  return text === null ? null : <p class="quiet">{text}.</p>;
}

/** The thresholds of a channel as they stand now: what each really does, the panel reading, and what that rests on. */
function ThresholdLines({ channel }: { channel: ChannelResult }): JSX.Element {
  return (
    <ul class="plain-list">
      {channel.thresholds.map((threshold) => (
        <li key={thresholdName(threshold)}>
          <b>{capital(thresholdName(threshold))}</b> <Badge standing={threshold.verdict} />{' '}
          <StandingHelp standing={threshold.verdict} />
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

/** A sensitivity beside the configured one, and the gap voltage, in one line; `null` where none was measured. */
export function readingsText(
  { measured, configured, unit, error, uncertainty, from }: SensitivityResult,
  gapVoltage: number | null,
): string | null {
  if (measured === null) return null;
  const source = from === null || from === 'channel list' ? '' : ` by the ${from}`;
  const off =
    error === null || configured === null
      ? ''
      : `, ${percent(error)} off the configured ${amount(configured, '')}`;
  const band = uncertainty === null ? ', no uncertainty given' : `, uncertainty ${percent(uncertainty)}`;
  const gap = gapVoltage === null ? '' : `; gap voltage ${amount(gapVoltage, 'V')}`;
  return `Sensitivity ${amount(measured, unit ?? '')}${source}${off}${band}${gap}`;
}

/** What was found of a threshold that was judged again since, and what became of it; `null` where it was not. */
export function asFoundText(
  channel: ChannelResult,
  asFound: AsFoundResult | null,
  threshold: ThresholdResult,
): string | null {
  const found = asFound?.thresholds[channel.thresholds.indexOf(threshold)];
  if (!found || threshold.change === null) return null;
  return `As found: ${reallyText(channel, found)}; ${changeWords[threshold.change]}`;
}

/** How long a threshold that was found late or unable to act may have been so; `null` where it was not. */
export function exposureText(
  { exposure }: ChannelResult,
  { name, multiplier, verdict }: ThresholdResult,
): string | null {
  const own = exposure.find((one) => one.name === name && one.multiplier === multiplier);
  if (!own || (own.from === null && own.to === null && own.goesOn !== true)) return null;
  const { from, to, days, goesOn } = own;
  const since = from === null ? 'from a day not known' : `from ${from}`;
  const until = to === null ? '' : `, found on ${to}`;
  const long = days === null ? '' : `, up to ${days} days`;
  const ending = goesOn === true ? `; still ${verdictWords[verdict]} today` : '';
  return `May have been so ${since}${until}${long}${ending}`;
}
