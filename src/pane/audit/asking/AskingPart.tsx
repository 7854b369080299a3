import type { JSX } from 'preact';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { ColumnMap } from '../../../audit/model/columnMap.ts';
import { Fold } from '../../parts/Fold.tsx';
import { answersOf, countAnswered } from './answers.ts';
import type { Asked } from './asked.ts';
import type { AskedRow } from './askedRow.ts';
import { askingMessages } from './askingMessages.ts';
import { questionRows } from './questionRows.ts';
import { missingRows, understoodRows } from './understoodRows.ts';
import { useAsking, type Asking } from './useAsking.ts';
import { AskedLine } from './AskedLine.tsx';

interface AskedTableProps {
  readonly label: string;
  readonly rows: readonly AskedRow[];
  readonly asking: Asking;
}

interface AskingPartProps {
  readonly asked: Asked;
  /** A result stands beside the questions. */
  readonly hasReport: boolean;
  /** The user said this about the workbook. */
  readonly onAnswer: (said: ColumnMap) => void;
}
/** Rows after which the button for all of them stands below them too. */
const few = 3;

/** What the user is asked about the workbook, as one table: needed meanings first, optional ones and what was understood folded away. */
export function AskingPart({ asked, hasReport, onAnswer }: AskingPartProps): JSX.Element {
  const { questions, tables, refused } = asked;
  const rows = useMemo(() => {
    const all = questionRows(questions, tables);
    const missing = refused ? missingRows(tables, questions) : [];
    const needed = [...all.filter((row) => row.needed), ...missing];
    const stakes = new Set(needed.map((row) => row.stakes));
    const [common] = stakes;
    return {
      // What hangs on every row is said once.
      stakes: stakes.size === 1 ? (common ?? '') : '',
      needed: stakes.size === 1 ? needed.map((row) => ({ ...row, stakes: '' })) : needed,
      optional: all.filter((row) => !row.needed),
      understood: understoodRows(tables),
    };
  }, [asked]);
  const [open, setOpen] = useState(!hasReport);
  const first = open ? (rows.needed[0] ?? rows.optional[0] ?? null) : null;
  const asking = useAsking([...rows.needed, ...rows.optional, ...rows.understood], tables, first);
  const head = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    if (open && hasReport) head.current?.focus();
  }, [open]);

  const yes = (some: readonly AskedRow[]): JSX.Element => {
    const count = countAnswered(some, asking.chosen);
    return (
      <div class="button-row">
        <button
          type="button"
          class="button button-first"
          disabled={count === 0}
          onClick={() => {
            onAnswer(answersOf(some, asking.chosen));
          }}
        >
          {count === some.length ? askingMessages.yesToAll(count) : askingMessages.use(count, some.length)}
        </button>
      </div>
    );
  };
  const asks = rows.needed.length > 0 ? rows.needed.length : rows.optional.length;
  const changes = countAnswered(rows.understood, asking.chosen);
  return (
    <>
      {asks > 0 && (
        <section class="asking">
          <h3 ref={head} tabIndex={-1} class="outcome">
            {hasReport ? askingMessages.open(asks) : askingMessages.title(asks)}
          </h3>
          {hasReport && (
            <button
              type="button"
              class="button"
              aria-expanded={open}
              onClick={() => {
                setOpen(!open);
              }}
            >
              {open ? askingMessages.hide : askingMessages.answer}
            </button>
          )}
          {open && (
            <>
              <p class="quiet">
                {rows.stakes} {hasReport ? askingMessages.partly : askingMessages.nothingYet}
              </p>
              {rows.needed.length > 0 && (
                <>
                  {yes(rows.needed)}
                  <AskedTable
                    label={askingMessages.title(rows.needed.length)}
                    rows={rows.needed}
                    asking={asking}
                  />
                  {rows.needed.length > few && yes(rows.needed)}
                </>
              )}
              {rows.optional.length > 0 && (
                <Fold title={askingMessages.optional(rows.optional.length)} needed={rows.needed.length === 0}>
                  {yes(rows.optional)}
                  <AskedTable
                    label={askingMessages.optional(rows.optional.length)}
                    rows={rows.optional}
                    asking={asking}
                  />
                </Fold>
              )}
            </>
          )}
        </section>
      )}
      {rows.understood.length > 0 && (
        <Fold part title={askingMessages.understood} needed={asked.wanted}>
          <p class="quiet">{askingMessages.understoodHint}</p>
          <AskedTable label={askingMessages.understood} rows={rows.understood} asking={asking} />
          {changes > 0 && (
            <div class="button-row">
              <button
                type="button"
                class="button button-first"
                onClick={() => {
                  onAnswer(answersOf(rows.understood, asking.chosen));
                }}
              >
                {askingMessages.useChanges(changes)}
              </button>
            </div>
          )}
        </Fold>
      )}
    </>
  );
}

/**
 * Meanings and other questions, a row each. The roles are said aloud, because a narrow pane lays the cells of a row below
 * each other, and a browser no longer takes that for a table.
 */
function AskedTable({ label, rows, asking }: AskedTableProps): JSX.Element {
  const { columns } = askingMessages;
  return (
    <div class="asked-box">
      <table class="asked" role="table" aria-label={label}>
        <thead role="rowgroup">
          <tr role="row">
            {[columns.meaning, columns.where, columns.values, columns.unit, columns.why, columns.change].map(
              (name) => (
                <th key={name} role="columnheader" scope="col">
                  {name}
                </th>
              ),
            )}
          </tr>
        </thead>
        <tbody role="rowgroup">
          {rows.map((row) => (
            <AskedLine key={row.id} row={row} asking={asking} />
          ))}
        </tbody>
      </table>
    </div>
  );
}
