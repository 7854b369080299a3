import { cellText, isBlank } from '../../../../cells/cell.ts';
import { cellAt, type Sheet } from '../../../../cells/sheet.ts';
import { headerKey } from '../../tables/header.ts';
import { statedUnit } from '../vocabulary/statedUnit.ts';
import type { Block, FieldPlace, Place } from './block.ts';
import { labelOf } from './cellKind.ts';
import { headerPath } from './headerPath.ts';
import { labelRuns, segmentsOf, type LabelRun } from './labelBlocks.ts';
import { shownAt } from './shownCells.ts';

/** A form before it is put together with those alike: the cell of each label's value. */
export interface Form {
  readonly sheet: Sheet;
  readonly top: number;
  readonly bottom: number;
  readonly labels: readonly FormLabel[];
}

interface FormLabel {
  readonly key: string;
  readonly text: string;
  readonly place: Place;
  readonly value: Place | null;
  readonly unit: Place | null;
}

/** What labels below each other make of a sheet: tables that stand on their side, and forms. */
export interface LabelledAreas {
  readonly blocks: readonly Omit<Block, 'id'>[];
  readonly forms: readonly Form[];
}

/** Tables on their side and forms in the rows of a sheet that are of no other block. */
export function labelledAreas(sheet: Sheet, isFree: (row: number) => boolean): LabelledAreas {
  const blocks: Omit<Block, 'id'>[] = [];
  const forms: Form[] = [];
  const segments = labelRuns(sheet, isFree)
    .flatMap(segmentsOf)
    .filter(({ rows }) => rows.length > 1);
  const single: LabelRun[] = [];
  for (const segment of segments) {
    if (recordColumns(segment).length > 1 && hasTag(segment)) blocks.push(columnsBlock(segment));
    else single.push(segment);
  }
  const heads = single.filter(hasTag);
  for (const head of heads) {
    const [top, bottom] = [head.rows[0] ?? 1, head.rows.at(-1) ?? 1];
    const beside = single.filter(
      (other) =>
        !hasTag(other) &&
        other.column > head.column &&
        (other.rows[0] ?? 0) <= bottom &&
        (other.rows.at(-1) ?? 0) >= top &&
        !heads.some(
          (nearer) =>
            nearer !== head &&
            nearer.column > head.column &&
            nearer.column < other.column &&
            (nearer.rows[0] ?? 0) <= bottom &&
            (nearer.rows.at(-1) ?? 0) >= top,
        ),
    );
    const labels = [head, ...beside].flatMap((part) => formLabels(part, top, bottom));
    forms.push({ sheet, top, bottom, labels });
  }
  return { blocks, forms };
}

function hasTag({ sheet, column, rows }: LabelRun): boolean {
  return rows.some((row) => {
    const label = labelOf(cellAt(sheet, row, column));
    return (
      label !== undefined &&
      label.unit === null &&
      (label.standard.some(({ id }) => id === 'tag') || label.concepts.has('tag'))
    );
  });
}

/** Columns of values in which more than a stray cell stands. */
function recordColumns({ sheet, rows, values }: LabelRun): number[] {
  return values.filter((column) => {
    const filled = rows.filter((row) => !isBlank(shownAt(sheet, row, column))).length;
    return filled >= 2 && filled * 3 >= rows.length;
  });
}

function columnsBlock(segment: LabelRun): Omit<Block, 'id'> {
  const { sheet, column, rows, unitColumn, values } = segment;
  const groups =
    column > 1 && rows.some((row) => !isBlank(shownAt(sheet, row, column - 1))) ? column - 1 : column;
  const lines = { sheet, first: groups, last: column, from: rows[0] ?? 1, rows: false };
  const fields = rows.map((at): FieldPlace => ({
    at,
    header: headerPath(lines, at),
    hidden: sheet.hiddenRows.has(at),
  }));
  return {
    sheet,
    lies: 'columns',
    header: [groups, column],
    fields,
    span: [values[0] ?? column + 1, values.at(-1) ?? column + 1],
    forms: [],
    formUnits: [],
    unitLine: unitColumn,
    table: null,
    repeats: new Set(),
  };
}

/** Columns beside a label in which its value may stand. */
const beside = 5;

function formLabels(run: LabelRun, top: number, bottom: number): FormLabel[] {
  const { sheet, column, unitColumn, values } = run;
  const right = Math.min(column + beside, values.at(-1) ?? column);
  return run.rows
    .filter((row) => row >= top && row <= bottom)
    .map((row): FormLabel => {
      const text = cellText(cellAt(sheet, row, column));
      let value: Place | null = null;
      let unit: Place | null = unitColumn === null ? null : { sheet: sheet.name, row, column: unitColumn };
      for (let at = column + 1; at <= right; at++) {
        const cell = cellAt(sheet, row, at);
        if (at === unitColumn || isBlank(cell)) continue;
        const place = { sheet: sheet.name, row, column: at };
        if (value === null) value = place;
        else if (unit === null && typeof cell === 'string' && statedUnit(cell)) unit = place;
      }
      const behind = value && unit === null ? cellAt(sheet, row, value.column + 1) : null;
      if (value && typeof behind === 'string' && statedUnit(behind))
        unit = { ...value, column: value.column + 1 };
      return { key: headerKey(text), text, place: { sheet: sheet.name, row, column }, value, unit };
    });
}

/** Forms with mostly the same labels as one block each: a record a form. */
export function formBlocks(forms: readonly Form[]): Omit<Block, 'id'>[] {
  const groups: Form[][] = [];
  for (const form of forms) {
    const alike = groups.find(([first]) => first && isAlike(first, form));
    if (alike) alike.push(form);
    else groups.push([form]);
  }
  return groups.flatMap((group) => blockOfForms(group) ?? []);
}

function isAlike(one: Form, other: Form): boolean {
  const keys = new Set(one.labels.map(({ key }) => key));
  const shared = other.labels.filter(({ key }) => keys.has(key)).length;
  return shared * 2 > Math.max(keys.size, other.labels.length);
}

function blockOfForms(group: readonly Form[]): Omit<Block, 'id'> | undefined {
  const [first] = group;
  if (!first) return undefined;
  const numbers = new Map<string, number>();
  const fields: FieldPlace[] = [];
  const values: Map<number, Place>[] = [];
  const units: Map<number, Place>[] = [];
  for (const { labels } of group) {
    const [own, ownUnits] = [new Map<number, Place>(), new Map<number, Place>()];
    for (const { key, text, place, value, unit } of labels) {
      let at = numbers.get(key);
      if (at === undefined) {
        at = numbers.size;
        numbers.set(key, at);
        fields.push({
          at,
          header: [{ text, row: place.row, column: place.column, covers: 'own' }],
          hidden: false,
        });
      }
      if (value && !own.has(at)) own.set(at, value);
      if (unit && !ownUnits.has(at)) ownUnits.set(at, unit);
    }
    values.push(own);
    units.push(ownUnits);
  }
  return {
    sheet: first.sheet,
    lies: 'forms',
    header: [first.top, first.bottom],
    fields,
    span: [0, group.length - 1],
    forms: values,
    formUnits: units,
    unitLine: null,
    table: null,
    repeats: new Set(),
  };
}
