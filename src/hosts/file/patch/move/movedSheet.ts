import type { EditablePart } from '../../write/package/editable.ts';
import { splice, type Edit } from '../../write/xml/splice.ts';
import { alternativesRefused } from '../alternatives.ts';
import { aroundRows } from '../aroundRows.ts';
import { mapSheet, type CellPlace, type FormulaPlace, type SheetMap } from '../sheetMap.ts';
import { type ElementMove, movedElement } from './movedElements.ts';
import { refuseFilter } from './refuseMove.ts';
import { type SheetMove, moved, movedArea } from './axis.ts';
import { columnLetters } from '../../../../cells/address.ts';
import { reference } from '../../../formats/reference.ts';
import { parseArea } from '../../read/area.ts';
import { escapeXml } from '../../write/xml/text.ts';
import { withAttributes } from '../attributes.ts';
import { type FormulaCell, type FormulaGroups, formulaGroups } from '../groups.ts';

/** What of a worksheet part is read for moving it. */
export type SheetSource = Pick<EditablePart, 'text'> & { readonly part: string; readonly sheet: string };

/** The text of a worksheet part after the steps of its sheet (`move`), and with formulas that lead to others' new places. */
export function movedSheet(
  { text, part, sheet }: SheetSource,
  move: SheetMove | undefined,
  formulaOf: (stored: string) => string,
): string {
  const map = mapSheet(text, part, sheet, () => true);
  if (map.hasAlternatives) throw alternativesRefused(sheet);
  const around = aroundRows(text, part, map);
  if (move) refuseFilter(around.root, move);
  const how: ElementMove = { text: around.text, formulaOf, move };
  const outside = around.back(movedElement(around.root, how) ?? []);
  return splice(text, [...outside, ...movedRows(text, map, move, formulaOf)]);
}

/** Moves the rows and cells of a sheet where its steps lead them (`move`), and rewrites formulas with `formulaOf`. */
function movedRows(
  text: string,
  map: SheetMap,
  move: SheetMove | undefined,
  formulaOf: (stored: string) => string,
): Edit[] {
  const groups = formulaGroups(map);
  const expands = move !== undefined || map.groups.some((cell) => changes(cell, groups, formulaOf));
  const formulaEdits = (cell: CellPlace): readonly Edit[] =>
    cell.formula
      ? movedCellFormula(text, { ...cell, formula: cell.formula }, groups, move, expands, formulaOf)
      : [];
  return map.rows.flatMap((place): readonly Edit[] => {
    if (!move) return place.cells.flatMap(formulaEdits);
    const row = moved(move.rows, place.row);
    if (row === undefined) return [removal(place)];
    const own = withAttributes(text, place, {
      r: String(row),
      ...(move.columns.length > 0 && { spans: undefined }),
    });
    return [
      ...own,
      ...place.cells.flatMap((cell) => {
        const column = moved(move.columns, cell.column);
        if (column === undefined) return [removal(cell)];
        return [
          ...withAttributes(text, cell, { r: columnLetters(column) + String(row) }),
          ...formulaEdits(cell),
        ];
      }),
    ];
  });
}

function changes(cell: FormulaCell, groups: FormulaGroups, formulaOf: (stored: string) => string): boolean {
  const full = groups.fullFormula(cell);
  return full !== undefined && formulaOf(full) !== full;
}

/** A formula that cells share is put in full into each of them: what it means differs where rows came between. */
function movedCellFormula(
  text: string,
  cell: FormulaCell,
  groups: FormulaGroups,
  move: SheetMove | undefined,
  expands: boolean,
  formulaOf: (stored: string) => string,
): Edit[] {
  const { formula } = cell;
  const full = groups.fullFormula(cell) ?? '';
  if (formula.attributes['t'] === 'shared') {
    if (!expands) return [];
    const { start, end, name } = formula;
    return [{ from: start, to: end, text: `<${name}>${escapeXml(formulaOf(full))}</${name}>` }];
  }
  const after = formulaOf(full);
  const content: Edit[] =
    after === full ? [] : [{ from: formula.openEnd, to: formula.closeStart, text: escapeXml(after) }];
  return move ? [...placeAttributes(text, formula, move), ...content] : content;
}

/** The area of an array formula or table of what-ifs, and the cells such a table takes its inputs from. */
function placeAttributes(text: string, formula: FormulaPlace, move: SheetMove): Edit[] {
  const values = ['ref', 'r1', 'r2'].flatMap((name): [string, string][] => {
    const area = parseArea(formula.attributes[name] ?? '');
    const after = area && movedArea(move, area);
    return after ? [[name, reference(after)]] : [];
  });
  return withAttributes(text, formula, Object.fromEntries(values));
}

function removal({ start, end }: CellPlace | SheetMap['rows'][number]): Edit {
  return { from: start, to: end, text: '' };
}
