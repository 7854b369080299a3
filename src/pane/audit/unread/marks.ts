import type { ColumnMap, NotOfAudit } from '../../../audit/model/columnMap.ts';
import type { NotRead } from '../../../audit/model/report.ts';
import { headerKey } from '../../../audit/read/tables/header.ts';
import { columnNumber } from '../../../cells/address.ts';

/** What was said to be no part of the audit, as it is kept with the columns. */
export function marksOf({ notOfAudit = [] }: ColumnMap): readonly NotOfAudit[] {
  return notOfAudit;
}

/**
 * The mark that settles one thing that was not read, and nothing else: a whole sheet, a column by its header (by its letters,
 * where another one of its sheet has the same header), else by the row in which it begins.
 */
export function markOf(one: NotRead, all: readonly NotRead[]): NotOfAudit {
  const { what, sheet, row } = one;
  if (what === 'sheet') return { sheet };
  return what === 'column' ? { sheet, column: nameOf(one, all) } : { sheet, row };
}

/** The map after something was said to be no part of the audit. */
export function withMark(map: ColumnMap, mark: NotOfAudit): ColumnMap {
  return isMarked(map, mark) ? map : { ...map, notOfAudit: [...marksOf(map), mark] };
}

/** The map after that was taken back. */
export function withoutMark(map: ColumnMap, mark: NotOfAudit): ColumnMap {
  const left = marksOf(map).filter((one) => !isSame(one, mark));
  const next: ColumnMap = { ...map, notOfAudit: left };
  if (left.length === 0) Reflect.deleteProperty(next, 'notOfAudit');
  return next;
}

/** Whether this was said to be no part of the audit. */
export function isMarked(map: ColumnMap, mark: NotOfAudit): boolean {
  return marksOf(map).some((one) => isSame(one, mark));
}

function isSame(one: NotOfAudit, other: NotOfAudit): boolean {
  return one.sheet === other.sheet && one.column === other.column && one.row === other.row;
}

function nameOf({ sheet, text, column }: NotRead, all: readonly NotRead[]): string {
  const key = headerKey(text);
  const alike = all.filter(
    (other) => other.what === 'column' && other.sheet === sheet && headerKey(other.text) === key,
  );
  return key !== '' && alike.length === 1 && Number.isNaN(columnNumber(text)) ? text : column;
}
