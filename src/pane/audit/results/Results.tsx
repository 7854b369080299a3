import type { ComponentChildren, JSX } from 'preact';
import { useMemo, useRef } from 'preact/hooks';
import type { ColumnMap } from '../../../audit/model/columnMap.ts';
import type { Report, Summary } from '../../../audit/model/report.ts';
import type { Workbook } from '../../../cells/sheet.ts';
import { attentionOfNoMachine, chanceOf } from '../../../sheets/machines.ts';
import { StandingsHelp } from '../../help/StandingHelp.tsx';
import { usePort } from '../../app/paneContext.ts';
import { Notice } from '../../parts/Notice.tsx';
import { Said } from '../../parts/Said.tsx';
import { TextField } from '../../parts/TextField.tsx';
import { useAction } from '../../parts/useLongAction.ts';
import { auditMessages } from '../auditMessages.ts';
import { ChannelDetail } from '../channels/ChannelDetail.tsx';
import { ChannelList } from '../channels/ChannelList.tsx';
import type { ListRow } from '../channels/listRows.ts';
import { MachineDetail } from '../channels/MachineDetail.tsx';
import { rowExtent } from '../channels/rowExtent.ts';
import { WhatIf } from '../whatIf/WhatIf.tsx';
import { ReplayPart } from '../recorded/ReplayPart.tsx';
import { RunUpPart } from '../recorded/RunUpPart.tsx';
import { Unread } from '../unread/Unread.tsx';
import { bySubject } from './bySubject.ts';
import { FindingList } from './FindingList.tsx';
import { Groups } from './Groups.tsx';
import { Headline } from './Headline.tsx';
import { NeedsAction } from './NeedsAction.tsx';
import { useResultList } from './useResultList.ts';
import { WriteSheets } from './WriteSheets.tsx';
import { standingClass, standings, signOf, standingWords, type Standing } from '../channels/standing.ts';

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
  /** Why the results are out of date; empty where they are not. */
  readonly outOfDate: readonly string[];
  /** Audits again; `null` while an audit is under way. */
  readonly onAgain: (() => void) | null;
  /** Hears when the pane itself begins and ends to write. */
  readonly onWriting: (under: boolean) => void;
  /** How far the next audit is. */
  readonly progress: ComponentChildren;
  /** What is still asked about the workbook. */
  readonly asking: ComponentChildren;
  /** What else can be done: it stands below the buttons that write sheets. */
  readonly children: ComponentChildren;
}

/** The result of an audit: the answer; the list, worst first; what is chosen in it; what was not read; what can be done; all that needs action, votes, problems. */
export function Results(props: ResultsProps): JSX.Element {
  const { report, workbook, map, onMap, outOfDate, onAgain, onWriting, progress, asking, children } = props;
  const port = usePort();
  const selecting = useAction();
  const part = useRef<HTMLDivElement>(null);
  const list = useResultList(report);
  const { machines, rows, fitting, filter, setFilter, chosen, channel, machine } = list;
  const subjects = useMemo(() => bySubject(report.attention), [report]);
  const apart = useMemo(() => attentionOfNoMachine(report), [report]);
  const chance = machine ? chanceOf(machine, report) : undefined;
  const several = machines.length > 1;
  const { asLeft, corrected } = report.summary;
  const wholeRead = report.notRead.length === 0 && apart.every(({ severity }) => severity !== 'critical');
  const choose = (row: ListRow): void => {
    list.choose(row);
    if (row.kind === 'machine') return;
    const { sheet, row: at } = row.channel.source.channels;
    const { from, to } = rowExtent(report, row.channel);
    selecting.run(() => port.selectRow(sheet, at, from, to));
  };
  return (
    <div ref={part}>
      <Headline
        report={report}
        outOfDate={outOfDate}
        onAgain={onAgain}
        onList={() => part.current?.querySelector<HTMLElement>('.channel-list')?.focus()}
      >
        {progress}
      </Headline>
      {asking}
      <div class="list-head">
        <h3>{several ? auditMessages.machineList : auditMessages.list}</h3>
        <span class="quiet" role="status">
          {fitting === 0
            ? auditMessages.nothingListed
            : auditMessages.listed(fitting, report.channels.length)}
        </span>
        <StandingsHelp />
      </div>
      <Counts
        summary={report.summary}
        standing={filter.standing}
        onStanding={(standing) => {
          setFilter({ ...filter, standing });
        }}
      />
      <div class="search">
        <TextField
          label={auditMessages.search}
          value={filter.search}
          placeholder={auditMessages.searchHint}
          onText={(search) => {
            setFilter({ ...filter, search });
          }}
        />
      </div>
      {rows.length > 0 && (
        <ChannelList
          rows={rows}
          chosen={chosen}
          onChoose={choose}
          onTurn={list.turn}
          attentionOf={subjects.ofChannel}
        />
      )}
      {selecting.refusal !== null && (
        <Notice tone="problem">
          <Said text={selecting.refusal} />
        </Notice>
      )}
      {channel ? (
        <ChannelDetail
          key={chosen}
          channel={channel}
          attention={subjects.ofChannel(channel)}
          policy={report.policy}
        />
      ) : machine ? (
        <MachineDetail key={chosen} machine={machine} wholeRead={wholeRead} chance={chance} />
      ) : (
        rows.length > 0 && <p class="quiet">{auditMessages.chooseOne}</p>
      )}
      {report.runUps && <RunUpPart runUps={report.runUps} />}
      {report.replay && <ReplayPart replay={report.replay} />}
      {asLeft > 0 && <p class="quiet">{auditMessages.measuredAgain(asLeft, corrected)}</p>}
      <Unread notRead={report.notRead} map={map} onMap={onMap} />
      <h3>{auditMessages.further}</h3>
      <WriteSheets
        key={report.generated}
        report={report}
        workbook={workbook}
        map={map}
        machine={machine}
        several={several}
        onWriting={onWriting}
      />
      {children}
      <NeedsAction
        attention={report.attention}
        beyondList={apart.some(({ severity }) => severity === 'critical')}
      />
      {report.groups.length > 0 && (
        <Groups groups={report.groups} machines={report.machines} subjects={subjects} />
      )}
      <WhatIf machines={report.machines} shown={chance} />
      {report.problems.length > 0 && (
        <details class="part">
          <summary>
            {auditMessages.problems} <span class="quiet">{report.problems.length}</span>
          </summary>
          <FindingList findings={report.problems} none="" />
        </details>
      )}
    </div>
  );
}

/** Channels by how they stand now, each count also the filter of the list: one stop of the Tab key, arrows move within. */
function Counts({ summary, standing, onStanding }: CountsProps): JSX.Element {
  const { channels, inBypass } = summary;
  const bar = useRef<HTMLDivElement>(null);
  const choices: readonly (Standing | null)[] = [null, ...standings];
  const at = choices.indexOf(standing);
  const onKey = (event: KeyboardEvent): void => {
    const buttons = [...(bar.current?.querySelectorAll<HTMLElement>('button') ?? [])];
    const from = buttons.findIndex((button) => button === event.target);
    const steps: Readonly<Record<string, number>> = {
      ArrowLeft: from - 1,
      ArrowUp: from - 1,
      ArrowRight: from + 1,
      ArrowDown: from + 1,
      Home: 0,
      End: buttons.length - 1,
    };
    const next = Object.hasOwn(steps, event.key) ? steps[event.key] : undefined;
    if (next === undefined) return;
    event.preventDefault();
    buttons[(next + buttons.length) % buttons.length]?.focus();
  };
  const countOf = (one: Standing | null): number =>
    one === null ? channels : one === 'in bypass' ? inBypass : summary[one];
  return (
    <div class="counts" role="toolbar" aria-label={auditMessages.filter} ref={bar} onKeyDown={onKey}>
      {choices.map((one, index) => (
        <button
          key={one ?? 'all'}
          type="button"
          class={`count${one === null ? '' : ` ${standingClass(one)}`}${countOf(one) === 0 ? ' count-none' : ''}`}
          aria-pressed={standing === one}
          tabIndex={index === at ? 0 : -1}
          onClick={() => {
            onStanding(standing === one ? null : one);
          }}
        >
          {one !== null && <span aria-hidden="true">{signOf(one)}</span>} <b>{countOf(one)}</b>{' '}
          {one === null ? auditMessages.all : standingWords[one]}
        </button>
      ))}
    </div>
  );
}
