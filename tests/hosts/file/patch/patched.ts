import { unzipSync } from 'fflate';
import type { SheetModel } from '../../../../src/sheets/model.ts';
import type { EditedCell } from '../../../../src/hosts/file/patch/types.ts';
import { patchWorkbook } from '../../../../src/hosts/file/patch/patchWorkbook.ts';
import type { ViewCell } from '../../../../src/hosts/file/view/types.ts';
import { viewWorkbook } from '../../../../src/hosts/file/view/viewWorkbook.ts';
import { collect } from '../../../../src/hosts/file/zip/collect.ts';
import { columnLetters } from '../../../../src/cells/address.ts';
import { zipParts } from '../../../fixtures/workbooks/package.ts';
import { smallParts } from '../../../fixtures/workbooks/small.ts';

/** The copy as bytes in one piece. */
export function patched(
  original: Uint8Array,
  sheet: string,
  cells: readonly EditedCell[],
  newSheets: readonly SheetModel[] = [],
): Uint8Array {
  const { sink, bytes } = collect();
  patchWorkbook(original, [{ sheet, cells }], newSheets, sink);
  return bytes();
}

/** A workbook whose sheet Channels has these rows (markup), and what else its part should hold. */
export function withRows(rows: string, { before = '', after = '' } = {}): Uint8Array {
  const parts = smallParts();
  const name = 'xl/worksheets/sheet1.xml';
  parts[name] = String(parts[name]).replace(
    /<sheetData>.*<\/sheetData>/,
    `${before}<sheetData>${rows}</sheetData>${after}`,
  );
  return zipParts(parts);
}

/** The cells of a sheet by address, without their columns and without empty plain ones. */
export function cellsOf(bytes: Uint8Array, sheet = 'Channels'): Record<string, Omit<ViewCell, 'column'>> {
  const rows = viewWorkbook('x.xlsx', bytes).sheets.find(({ name }) => name === sheet)?.rows ?? [];
  return Object.fromEntries(
    rows.flatMap(({ row, cells }) =>
      cells
        .filter(({ value, formula, style }) => value !== null || formula !== undefined || style !== 0)
        .map(({ column, ...cell }) => [`${columnLetters(column)}${row}`, cell]),
    ),
  );
}

/** Names of the parts that differ, came or went, after unpacking with fflate. */
export function changedParts(before: Uint8Array, after: Uint8Array): string[] {
  const [one, other] = [unzipSync(before), unzipSync(after)];
  return [...new Set([...Object.keys(one), ...Object.keys(other)])]
    .filter(
      (name) => Buffer.compare(one[name] ?? Buffer.from('none'), other[name] ?? Buffer.from('none')) !== 0,
    )
    .sort();
}
