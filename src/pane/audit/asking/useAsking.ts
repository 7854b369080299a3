import { useState } from 'preact/hooks';
import type { TableRead } from '../../../audit/read/understand/tables/tableRead.ts';
import type { SheetArea } from '../../../hosts/port/port.ts';
import { type Chosen, type ChosenById, chosenIn } from './answers.ts';
import type { AskedRow } from './askedRow.ts';
import { pickColumn } from './pickColumn.ts';
import { usePointing, useSelections } from './usePointing.ts';

/** What the tables of questions and of what was understood share: one row is pointed at, and one may be changed. */
export interface Asking {
  readonly chosen: ChosenById;
  /** Id of the row whose column is pointed at in the workbook. */
  readonly current: string | null;
  /** Id of the row that is being changed. */
  readonly changing: string | null;
  /** Why the last click in the sheet chose nothing. */
  readonly complaint: string | null;
  readonly setCurrent: (row: AskedRow) => void;
  readonly setChanging: (row: AskedRow | null) => void;
  readonly choose: (row: AskedRow, chosen: Chosen) => void;
}

/** The state of asking about these rows; `first` is the row that is pointed at while the user has touched none. */
export function useAsking(
  rows: readonly AskedRow[],
  tables: readonly TableRead[],
  first: AskedRow | null,
): Asking {
  const [chosen, setChosen] = useState<ChosenById>(new Map());
  const [touched, setTouched] = useState<string | null>(null);
  const [changingId, setChangingId] = useState<string | null>(null);
  const [complaint, setComplaint] = useState<string | null>(null);
  const row = rows.find(({ id }) => id === touched) ?? first;
  const changing = rows.find(({ id }) => id === changingId) ?? null;
  const place = (row && chosenIn(row, chosen)?.place) ?? null;
  usePointing(place);

  const choose = (of: AskedRow, made: Chosen): void => {
    setComplaint(null);
    setChosen((before) => new Map(before).set(of.id, made));
  };
  const refusal = useSelections(
    changing !== null && changing.column !== null,
    place,
    (selected: SheetArea) => {
      if (!changing?.column) return;
      const picked = pickColumn(selected, changing.column, tables);
      if (typeof picked === 'string') setComplaint(picked);
      else choose(changing, { choice: picked, unit: null });
    },
  );
  return {
    chosen,
    current: row?.id ?? null,
    changing: changing?.id ?? null,
    complaint: complaint ?? refusal,
    setCurrent: (to) => {
      setTouched(to.id);
    },
    setChanging: (to) => {
      setComplaint(null);
      setChangingId(to?.id ?? null);
      if (to) setTouched(to.id);
    },
    choose,
  };
}
