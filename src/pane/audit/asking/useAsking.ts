import { useState, useEffect, useRef } from 'preact/hooks';
import type { TableRead } from '../../../audit/read/understand/tables/tableRead.ts';
import { type SheetArea, HostRefused } from '../../../hosts/port/port.ts';
import { type Chosen, type ChosenById, chosenIn } from './answers.ts';
import type { AskedRow, Choice } from './askedRow.ts';
import { meaningWords } from '../../../audit/advise/questions/questionWords.ts';
import { askingMessages } from './askingMessages.ts';
import { fieldChoice, canHold } from './fieldChoices.ts';
import { fieldAt } from './places.ts';
import { usePort } from '../../app/paneContext.ts';

/** What the tables of questions and of what was understood share: one row is pointed at, and one may be changed. */
export interface Asking {
  readonly chosen: ChosenById;
  /** Id of the row whose column is pointed at in the workbook. */
  readonly current: string | null;
  /** Id of the row that is being changed. */
  readonly changing: string | null;
  /** Why the last click in the sheet chose nothing. */
  readonly fault: string | null;
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
  const [fault, setFault] = useState<string | null>(null);
  const row = rows.find(({ id }) => id === touched) ?? first;
  const changing = rows.find(({ id }) => id === changingId) ?? null;
  const place = (row && chosenIn(row, chosen)?.place) ?? null;
  usePointing(place);

  const choose = (of: AskedRow, made: Chosen): void => {
    setFault(null);
    setChosen((before) => new Map(before).set(of.id, made));
  };
  const refusal = useSelections(
    changing !== null && changing.column !== null,
    place,
    (selected: SheetArea) => {
      if (!changing?.column) return;
      const picked = pickColumn(selected, changing.column, tables);
      if (typeof picked === 'string') setFault(picked);
      else choose(changing, { choice: picked, unit: null });
    },
  );
  return {
    chosen,
    current: row?.id ?? null,
    changing: changing?.id ?? null,
    fault: fault ?? refusal,
    setCurrent: (to) => {
      setTouched(to.id);
    },
    setChanging: (to) => {
      setFault(null);
      setChangingId(to?.id ?? null);
      if (to) setTouched(to.id);
    },
    choose,
  };
}

/** The choice of the column in which a selection begins, or in one sentence why it can't be chosen. */
export function pickColumn(
  { sheet, area }: SheetArea,
  column: NonNullable<AskedRow['column']>,
  tables: readonly TableRead[],
): Choice | string {
  const { meaning: id, tables: asked } = column;
  // Of two probes in one row, the one that was asked about comes first.
  const own = [...asked, ...tables.filter((table) => !asked.includes(table))];
  for (const table of own) {
    const field = fieldAt(table, sheet, area.top, area.left);
    if (!field) continue;
    return canHold(field, id)
      ? fieldChoice(id, table, field, asked)
      : askingMessages.doesNotFit(field.text, meaningWords(id));
  }
  return askingMessages.noList(sheet);
}

/** Points at a place in the workbook while it is shown, and away from it in the end. A place that can't be shown is not pointed at. */
function usePointing(place: SheetArea | null): void {
  const port = usePort();
  const key = keyOf(place);
  const last = useRef(Promise.resolve());
  const point = (to: SheetArea | null): void => {
    // One after the other, so that the last one stays.
    last.current = last.current
      .then(() => port.pointAt(to))
      .catch((error: unknown) => {
        if (!(error instanceof HostRefused)) throw error;
      });
  };
  useEffect(() => {
    point(place);
  }, [key]);
  useEffect(
    () => () => {
      point(null);
    },
    [],
  );
}

/**
 * Hears what the user selects in the workbook while `listens`; what the pane itself points at is not told. The result is
 * what is wrong where the host can't tell.
 */
function useSelections(
  listens: boolean,
  pointed: SheetArea | null,
  onSelected: (place: SheetArea) => void,
): string | null {
  const port = usePort();
  const [refusal, setRefusal] = useState<string | null>(null);
  const heard = useRef(onSelected);
  heard.current = onSelected;
  const own = useRef<string>('');
  own.current = keyOf(pointed);
  useEffect(() => {
    if (!listens) return;
    let stop: (() => void) | null = null;
    let gone = false;
    setRefusal(null);
    port
      .onSelect((place) => {
        if (!gone && keyOf(place) !== own.current) heard.current(place);
      })
      .then(
        (off) => {
          if (gone) off();
          else stop = off;
        },
        (error: unknown) => {
          if (!(error instanceof HostRefused)) throw error;
          setRefusal(error.message);
        },
      );
    return () => {
      gone = true;
      stop?.();
    };
  }, [port, listens]);
  return refusal;
}

function keyOf(place: SheetArea | null): string {
  if (!place) return '';
  const { top, left, bottom, right } = place.area;
  return JSON.stringify([place.sheet, top, left, bottom, right]);
}
