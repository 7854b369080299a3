import { cellAddress } from '../../cells/address.ts';
import { type Cell, cellText, DateCell, PercentCell } from '../../cells/cell.ts';
import type { TableKind } from '../../audit/read/tables/vocabulary.ts';
import type { TidyChannel, TidyValue } from '../../audit/read/tidy/tidyList.ts';
import type { Place } from '../../audit/read/understand/blocks/block.ts';
import type { FormulaList } from '../formulaList.ts';
import type { ModelCell, ModelValue } from '../model.ts';
import type { SheetColumn } from './tidyColumns.ts';

/** Days from 1899-12-30, which spreadsheets count from, to 1970-01-01. */
const epoch = 25_569;

/** The text of a cell of the user's own; empty where there is none. */
export type TextAt = (place: Place) => string;

/** The cells of a channel's row: links where a cell of the user's own holds just the value, else the value and where it is from. */
export function cellsOf(
  channel: TidyChannel,
  kind: TableKind,
  columns: readonly SheetColumn[],
  { formulas, textAt }: { readonly formulas: FormulaList; readonly textAt: TextAt },
): readonly (ModelCell | undefined)[] {
  const notLinked: string[] = [];
  const cells = columns.map(({ is, id, header }): ModelCell | undefined => {
    const own = channel.values.get(id);
    if (is === 'unit') return own?.unit ? { value: own.unit.text, style: 'text' } : undefined;
    if (is === 'source') return undefined;
    if (own) return valueCell(own, header, notLinked, formulas);
    if (id === 'tag') return tagCell(channel, channel.at[kind], textAt, formulas);
    return id === 'machine' && channel.machine !== '' ? { value: channel.machine, style: 'text' } : undefined;
  });
  const source = notLinked.length > 0 ? notLinked.join('; ') : null;
  const last = source === null ? undefined : { value: source, style: 'text' };
  return columns.map((column, at) => (column.is === 'source' ? last : cells[at]));
}

function tagCell({ tag }: TidyChannel, place: Place, textAt: TextAt, formulas: FormulaList): ModelCell {
  const link = textAt(place) === tag ? linkTo(place) : null;
  return { value: tag, style: 'text', ...(link === null ? {} : { formula: formulas.place(link) }) };
}

function valueCell(
  { cell, place, asItStands }: TidyValue,
  header: string,
  notLinked: string[],
  formulas: FormulaList,
): ModelCell {
  const value = modelValue(cell);
  const isDate = cell instanceof DateCell;
  const link = asItStands ? linkTo(place) : null;
  if (link !== null) return { value, style: isDate ? 'date' : 'text', formula: formulas.place(link) };
  notLinked.push(`${header}: ${place.sheet}!${cellAddress(place.row, place.column)}`);
  return { value, style: isDate ? 'typedDate' : 'typed' };
}

/** The formula of a cell that shows another; `null` for a sheet whose name a formula's template can't hold. */
function linkTo({ sheet, row, column }: Place): string | null {
  if (/[{}]/u.test(sheet)) return null;
  return `'${sheet.replaceAll("'", "''")}'!${cellAddress(row, column)}`;
}

function modelValue(cell: Exclude<Cell, null>): ModelValue {
  if (cell instanceof DateCell) return cell.day + epoch;
  if (cell instanceof PercentCell) return cell.percent / 100;
  return typeof cell === 'object' ? cellText(cell) : cell;
}
