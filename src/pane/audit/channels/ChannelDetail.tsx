import type { ThresholdResult } from '../../../audit/model/threshold.ts';
import type { JSX } from 'preact';
import type { Policy } from '../../../audit/model/policy.ts';
import type { ChannelResult } from '../../../audit/model/report.ts';
import { thresholdSentence } from '../../../sheets/summary/sentence.ts';
import { channelScene } from '../../drawing/channelScene.ts';
import { RecordPart } from '../../drawing/record/RecordPart.tsx';
import { SceneDrawing } from '../../drawing/SceneDrawing.tsx';
import { capital } from '../../../audit/model/wording.ts';
import { CellLink } from '../../parts/CellLink.tsx';
import { Said } from '../../parts/Said.tsx';
import { auditWords } from '../auditWords.ts';
import { FindingList } from '../results/FindingList.tsx';
import { asLeftLine, asLeftReadingsLine, exposureLine, interimNow } from './asLeftLine.ts';
import { Badge } from './Badge.tsx';
import { nextCheck } from './nextCheck.ts';

/** One channel: drawing, what each threshold does, what to check next, findings, and its rows in the workbook. */
export function ChannelDetail({ channel, policy }: { channel: ChannelResult; policy: Policy }): JSX.Element {
  const scene = channelScene(channel);
  const { channels, settings } = channel.source;
  const where = [channel.machine, channel.location, channel.kind ?? ''].filter((text) => text !== '');
  return (
    <article class="channel-detail" aria-label={auditWords.thresholds}>
      <h3>
        <Said text={channel.tag} most={60} /> <Badge verdict={channel.verdict} />
      </h3>
      <p class="quiet">
        <Said text={where.join(', ')} most={160} />
      </p>
      {scene ? <SceneDrawing scene={scene} /> : <p class="quiet">{auditWords.noDrawing}</p>}
      <h4>{auditWords.next}</h4>
      <p>
        <Said text={nextCheck(channel)} />
      </p>
      <h4>{auditWords.thresholds}</h4>
      <ul class="plain-list">
        {channel.thresholds
          .filter((threshold) => threshold.setpoint !== null)
          .map((threshold) => (
            <li key={`${threshold.name} ${threshold.multiplier}`}>
              <b>{capital(threshold.name)}</b>: {thresholdSentence(channel, threshold)}
              {linesBelow(channel, threshold).map((line) => (
                <span class="quiet block" key={line}>
                  {line}
                </span>
              ))}
            </li>
          ))}
      </ul>
      {channel.asLeft && (
        <>
          <h4>
            {auditWords.asLeft} <Badge verdict={channel.asLeft.verdict} />
          </h4>
          <p>{asLeftReadingsLine(channel.asLeft)}</p>
        </>
      )}
      {channel.record && <RecordPart channel={channel} record={channel.record} policy={policy} />}
      <h4>{auditWords.findings}</h4>
      <FindingList findings={channel.findings} none={auditWords.noFindings} />
      <h4>{auditWords.rows}</h4>
      <p>
        {auditWords.channelRow}: <CellLink sheet={channels.sheet} row={channels.row} column="" />
        {settings && (
          <>
            , {auditWords.settingsRow}: <CellLink sheet={settings.sheet} row={settings.row} column="" />
          </>
        )}
      </p>
    </article>
  );
}

/** What stands below a threshold: how long it may have been so, where it acts as left, and an interim setpoint. */
function linesBelow(channel: ChannelResult, threshold: ThresholdResult): string[] {
  const lines = [exposureLine, asLeftLine, interimNow].map((line) => line(channel, threshold));
  return lines.filter((line) => line !== null);
}
