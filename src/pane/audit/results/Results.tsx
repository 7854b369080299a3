import type { JSX } from 'preact';
import { useMemo, useState } from 'preact/hooks';
import type { ColumnMap } from '../../../audit/model/columnMap.ts';
import type { ChannelResult, Report, Summary } from '../../../audit/model/report.ts';
import type { Workbook } from '../../../cells/sheet.ts';
import { usePort } from '../../app/paneContext.ts';
import { Notice } from '../../parts/Notice.tsx';
import { Said } from '../../parts/Said.tsx';
import { TextField } from '../../parts/TextField.tsx';
import { useDeed } from '../../parts/useLongDeed.ts';
import { auditWords, clockTime } from '../auditWords.ts';
import { ChannelDetail } from '../channels/ChannelDetail.tsx';
import { everything, filterChannels } from '../channels/channelFilter.ts';
import { ChannelList } from '../channels/ChannelList.tsx';
import { rowExtent } from '../channels/rowExtent.ts';
import { ReplayPart } from '../recorded/ReplayPart.tsx';
import { RunUpPart } from '../recorded/RunUpPart.tsx';
import { Unread } from '../unread/Unread.tsx';
import { bySubject } from './bySubject.ts';
import { FindingList } from './FindingList.tsx';
import { Groups } from './Groups.tsx';
import { NeedsAction } from './NeedsAction.tsx';
import { WriteSheets } from './WriteSheets.tsx';
import {
  standingClass,
  standings,
  standingSigns,
  standingWords,
  type Standing,
} from '../channels/standing.ts';

interface CountsProps {
  readonly summary: Summary;
  readonly standing: Standing | null;
  readonly onStanding: (standing: Standing | null) => void;
}

interface ResultsProps {
  readonly report: Report;
  /** The workbook that was audited. */
  readonly workbook: Workbook;
  readonly map: ColumnMap;
  readonly onMap: (map: ColumnMap) => void;
  /** Hears when the pane itself begins and ends to write. */
  readonly onWriting: (under: boolean) => void;
}

/** The result of an audit: what needs action, what was not read, counts, channels worst first, the chosen one, groups, problems. */
export function Results({ report, workbook, map, onMap, onWriting }: ResultsProps): JSX.Element {
  const port = usePort();
  const selecting = useDeed();
  const [filter, setFilter] = useState(everything);
  const [chosen, setChosen] = useState<ChannelResult | null>(null);
  const subjects = useMemo(() => bySubject(report.attention), [report]);
  const listed = useMemo(() => filterChannels(report.channels, filter), [report, filter]);
  const choose = (channel: ChannelResult): void => {
    setChosen(channel);
    const { sheet, row } = channel.source.channels;
    const { from, to } = rowExtent(report, channel);
    selecting.run(() => port.selectRow(sheet, row, from, to));
  };
  return (
    <>
      <h3 class="outcome" tabIndex={-1}>
        {auditWords.results}
      </h3>
      <p class="quiet">
        {auditWords.resultFrom(report.version)}{' '}
        <time dateTime={report.generated}>{clockTime(report.generated)}</time>
      </p>
      <NeedsAction attention={report.attention} notRead={report.notRead} channels={report.channels} />
      {report.runUps && <RunUpPart runUps={report.runUps} />}
      {report.replay && <ReplayPart replay={report.replay} />}
      <Unread notRead={report.notRead} map={map} onMap={onMap} />
      <h3>{auditWords.list}</h3>
      <Counts
        summary={report.summary}
        standing={filter.standing}
        onStanding={(standing) => {
          setFilter({ ...filter, standing });
        }}
      />
      <WriteSheets report={report} workbook={workbook} map={map} onWriting={onWriting} />
      <TextField
        label={auditWords.search}
        value={filter.search}
        onText={(search) => {
          setFilter({ ...filter, search });
        }}
      />
      <p class="quiet" role="status">
        {listed.length === 0
          ? auditWords.nothingListed
          : auditWords.listed(listed.length, report.channels.length)}
      </p>
      {listed.length > 0 && (
        <ChannelList channels={listed} chosen={chosen} onChoose={choose} attentionOf={subjects.ofChannel} />
      )}
      {selecting.refusal !== null && (
        <Notice tone="problem">
          <Said text={selecting.refusal} />
        </Notice>
      )}
      {chosen ? (
        <ChannelDetail
          key={report.channels.indexOf(chosen)}
          channel={chosen}
          attention={subjects.ofChannel(chosen)}
          policy={report.policy}
        />
      ) : (
        listed.length > 0 && <p class="quiet">{auditWords.chooseOne}</p>
      )}
      {report.groups.length > 0 && (
        <Groups groups={report.groups} machines={report.machines} subjects={subjects} />
      )}
      {report.problems.length > 0 && (
        <details class="part">
          <summary>
            {auditWords.problems} <span class="quiet">{report.problems.length}</span>
          </summary>
          <FindingList findings={report.problems} none="" />
        </details>
      )}
    </>
  );
}

/** Channels by how they stand now, each count also the filter of the list; groups that cannot trip, corrected channels. */
function Counts({ summary, standing, onStanding }: CountsProps): JSX.Element {
  const { channels, inBypass, groupsThatCannotTrip, asLeft, corrected } = summary;
  return (
    <>
      <div class="counts" role="group" aria-label={auditWords.list}>
        <button
          type="button"
          class="count"
          aria-pressed={standing === null}
          onClick={() => {
            onStanding(null);
          }}
        >
          <b>{channels}</b> {auditWords.all}
        </button>
        {standings.map((one) => (
          <button
            key={one}
            type="button"
            class={`count ${standingClass(one)}`}
            aria-pressed={standing === one}
            onClick={() => {
              onStanding(standing === one ? null : one);
            }}
          >
            <span aria-hidden="true">{standingSigns[one]}</span>{' '}
            <b>{one === 'in bypass' ? inBypass : summary[one]}</b> {standingWords[one]}
          </button>
        ))}
      </div>
      {groupsThatCannotTrip > 0 && (
        <p class="groups-idle">
          <b>{groupsThatCannotTrip}</b>{' '}
          {groupsThatCannotTrip === 1 ? 'voting group cannot trip.' : 'voting groups cannot trip.'}
        </p>
      )}
      {asLeft > 0 && <p class="quiet">{auditWords.measuredAgain(asLeft, corrected)}</p>}
    </>
  );
}
