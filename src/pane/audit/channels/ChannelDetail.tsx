import type { JSX } from 'preact';
import type { Policy } from '../../../audit/model/policy.ts';
import type { Attention, ChannelResult } from '../../../audit/model/report.ts';
import { channelScene } from '../../drawing/channelScene.ts';
import { RecordPart } from '../../drawing/record/RecordPart.tsx';
import { SceneDrawing } from '../../drawing/SceneDrawing.tsx';
import { CellLink } from '../../parts/CellLink.tsx';
import { Said } from '../../parts/Said.tsx';
import { auditWords } from '../auditWords.ts';
import { FindingList } from '../results/FindingList.tsx';
import { AttentionList } from '../results/NeedsAction.tsx';
import { Badge } from './Badge.tsx';
import { standingOf } from './standing.ts';
import { readingsText } from './stateText.ts';
import { ThresholdLines } from './ThresholdLines.tsx';

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
    <article class="channel-detail" aria-label={auditWords.thresholds}>
      <h3>
        <Said text={channel.tag} most={60} /> <Badge standing={standingOf(channel)} />
      </h3>
      <p class="quiet">
        <Said text={where.join(', ')} most={160} />
      </p>
      <h4>{auditWords.next}</h4>
      {attention.length > 0 ? <AttentionList attention={attention} ofOne /> : <p>{auditWords.nothingToDo}</p>}
      {scene ? <SceneDrawing scene={scene} /> : <p class="quiet">{auditWords.noDrawing}</p>}
      <h4>{auditWords.thresholdsNow(channel.state)}</h4>
      <Readings text={readingsText(sensitivity, inputs.gapVoltage)} />
      <ThresholdLines channel={channel} />
      {asFound && (
        <>
          <h4>
            {auditWords.wasFound} <Badge standing={asFound.verdict} />
          </h4>
          <Readings text={readingsText(asFound.sensitivity, asFound.gapVoltage)} />
        </>
      )}
      {record && <RecordPart channel={channel} record={record} policy={policy} />}
      <h4>{auditWords.findings}</h4>
      <FindingList findings={findings} none={auditWords.noFindings} />
      <h4>{auditWords.rows}</h4>
      <p>
        {auditWords.channelRow}:{' '}
        <CellLink sheet={source.channels.sheet} row={source.channels.row} column="" />
        {source.settings && (
          <>
            , {auditWords.settingsRow}:{' '}
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
