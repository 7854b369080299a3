import type { JSX } from 'preact';
import { useMemo } from 'preact/hooks';
import {
  type SinceResult,
  changeKinds,
  changeWords,
  type Change,
  type ChangeKind,
} from '../../../audit/model/since.ts';
import type { Workbook } from '../../../cells/sheet.ts';
import { earlierSheets, type EarlierSheet } from '../../../sheets/earlier/earlierSheets.ts';
import { ChoiceField } from '../../parts/ChoiceField.tsx';
import { Fold } from '../../parts/Fold.tsx';
import type { Severity } from '../../../audit/model/findings.ts';
import { CellLink } from '../../parts/CellLink.tsx';
import { LongList, atOnce } from '../../parts/LongList.tsx';
import { Said } from '../../parts/Said.tsx';
import { shownText } from '../../parts/shownText.ts';
import { clockTime } from '../auditMessages.ts';

/** Texts of the comparison with earlier results. */
const sinceMessages = {
  title: 'Compare with earlier results',
  hint: 'Results of earlier audits stand in this workbook. Choose one to see what changed since; what changed is then written with the other sheets.',
  choose: 'Earlier results',
  none: 'None',
  nothing: 'Nothing changed.',
  ofEarlier: 'Of the earlier results',
  more: (count: number) => `Show ${count} more`,
} as const;

/** Kinds of change that call for action at once, and those that must be looked at. */
const grave = new Set<ChangeKind>(['newly unreachable', 'newly late']);

const doubtful = new Set<ChangeKind>(['newly undetermined', 'newly incomplete', 'gone', 'not compared']);

interface ComparePartProps {
  readonly workbook: Workbook;
  /** Sheet of earlier results that was chosen. */
  readonly earlier: string | null;
  readonly since: SinceResult | null;
  readonly onEarlier: (sheet: string | null) => void;
}

/** Earlier results of the workbook to choose from, and what changed since; nothing where the workbook has none. */
export function ComparePart({ workbook, earlier, since, onEarlier }: ComparePartProps): JSX.Element | null {
  const sheets = useMemo(() => earlierSheets(workbook), [workbook]);
  if (sheets.length === 0) return null;
  const choices = sheets.map((one) => ({ value: one.sheet.name, text: earlierText(one) }));
  return (
    <Fold part title={sinceMessages.title} needed={since !== null}>
      <p class="quiet">{sinceMessages.hint}</p>
      <ChoiceField
        label={sinceMessages.choose}
        value={earlier ?? ''}
        choices={[{ value: '', text: sinceMessages.none }, ...choices]}
        onChoice={(sheet) => {
          onEarlier(sheet === '' ? null : sheet);
        }}
      />
      {since && <ChangeList key={since.before.sheet} since={since} />}
    </Fold>
  );
}

/** What changed since an earlier audit, worst first. */
function ChangeList({ since }: { since: SinceResult }): JSX.Element {
  const { changes, counts, remarks } = since;
  const told = changeKinds
    .filter((kind) => counts[kind] > 0)
    .map((kind) => `${counts[kind]} ${changeWords[kind]}`);
  return (
    <>
      <p role="status">{told.length === 0 ? sinceMessages.nothing : `${told.join(', ')}.`}</p>
      <LongList
        entries={changes}
        more={sinceMessages.more}
        line={(change, index) => <ChangeLine key={index} change={change} />}
      />
      {remarks.length > 0 && (
        <>
          <p class="quiet">{sinceMessages.ofEarlier}</p>
          <ul class="findings">
            {remarks.slice(0, atOnce).map(({ sheet, row, column, message }, index) => (
              <li key={index}>
                {sheet !== '' && <CellLink sheet={sheet} row={row} column={column} />} <Said text={message} />
              </li>
            ))}
          </ul>
        </>
      )}
    </>
  );
}

function ChangeLine({ change }: { change: Change }): JSX.Element {
  const { kind, tag, message, source } = change;
  return (
    <li class={`severity-${severityOf(kind)}`}>
      <b>{changeWords[kind]}</b> <Said text={tag} most={60} />{' '}
      <CellLink sheet={source.sheet} row={source.row} column="A" /> <Said text={message} />
    </li>
  );
}

function severityOf(kind: ChangeKind): Severity {
  return grave.has(kind) ? 'critical' : doubtful.has(kind) ? 'warning' : 'note';
}

/** A sheet of earlier results as the list names it: its name and when it was audited. */
function earlierText({ sheet, audited }: EarlierSheet): string {
  return `${shownText(sheet.name, 40)} · ${audited === null ? 'time not known' : clockTime(audited)}`;
}
