import { cellText, isBlank } from '../../../cells/cell.ts';
import { cellAt } from '../../../cells/sheet.ts';
import { type FoundTable } from '../tables/found.ts';
import { tagKey } from '../tables/tagKey.ts';

/** Rows of a table by tag. Tags are compared trimmed and without regard to case. */
export interface TagIndex {
  /** Rows in the order of the sheet that have a tag. */
  readonly tagged: readonly number[];
  /** Rows without a tag in which some other column of ours is filled. */
  readonly untagged: readonly number[];
  rowsOf(key: string): readonly number[];
  /** What a row is joined by. */
  keyOf(row: number): string;
  /** Whether a tag stands in the table. */
  hasTag(key: string): boolean;
}

/** The tag in a row, as it is written, without the spaces around it. */
export function tagAt(table: FoundTable, row: number): string {
  return textAt(table, row, 'tag');
}

/** The machine that a row is about, as it is written; empty where it names none. */
export function machineAt(table: FoundTable, row: number): string {
  return table.origin?.machine(row) ?? textAt(table, row, 'machine');
}

function textAt(table: FoundTable, row: number, id: 'tag' | 'machine'): string {
  const column = table.columns.get(id);
  return column ? cellText(cellAt(table.sheet, row, column.column)) : '';
}

/**
 * Whether a text alone in its row is a heading or remark rather than a tag without values: more than one word, or a word
 * without a digit that stands in no other table.
 */
export function looksLikeHeading(text: string, inOtherTable: boolean): boolean {
  return /\s/u.test(text) || (!inOtherTable && !/\d/u.test(text));
}

/** Whether every column of ours but the tag is empty in a row. */
export function isOnlyTag(table: FoundTable, row: number): boolean {
  for (const [id, column] of table.columns) {
    if (id !== 'tag' && !isBlank(cellAt(table.sheet, row, column.column))) return false;
  }
  return true;
}

/** Indexes the rows of a table by their tags; rows that only repeat the header do not count. */
export function indexTags(table: FoundTable): TagIndex {
  const tagged: number[] = [];
  const untagged: number[] = [];
  const first = new Map<string, number>();
  const more = new Map<string, number[]>();
  const keyOf = table.origin?.key ?? ((row: number) => tagKey(tagAt(table, row)));
  for (let row = table.firstRow; row <= table.lastRow; row++) {
    if (table.skipped.has(row)) continue;
    const key = keyOf(row);
    if (key === '') {
      if (!isOnlyTag(table, row)) untagged.push(row);
      continue;
    }
    tagged.push(row);
    const known = first.get(key);
    if (known === undefined) first.set(key, row);
    else {
      const rows = more.get(key);
      if (rows) rows.push(row);
      else more.set(key, [known, row]);
    }
  }
  const tags = table.origin ? new Set(tagged.map((row) => tagKey(tagAt(table, row)))) : first;
  return {
    tagged,
    untagged,
    keyOf,
    hasTag: (key) => tags.has(key),
    rowsOf(key) {
      const several = more.get(key);
      if (several) return several;
      const only = first.get(key);
      return only === undefined ? [] : [only];
    },
  };
}
