import { describe, expect, it } from 'vitest';
import { heightOf } from '../../src/sheets/look/lines.ts';
import { widthOfText } from '../../src/sheets/look/textWidth.ts';
import type { CellStyle, ModelRow, SheetModel } from '../../src/sheets/model.ts';
import { resultSheets } from '../../src/sheets/resultSheets.ts';
import { auditedOn } from '../demo/files.ts';

const report = auditedOn('2026-11-30');
const sheets = resultSheets(report);
const sheetOf = (name: string): SheetModel => sheets.find((sheet) => sheet.name === name)!;

/** The monitors of K-101, which has the record and the run-up, show steps of 0.1 mil. */
const step = 1;

/** Texts that do not show in full: on one line beyond the empty cells beside it, wrapped beyond the row. */
function clipped({ widths, styles, merges = [] }: SheetModel, row: ModelRow, number: number): string[] {
  const isMerged = (column: number): boolean =>
    merges.some(({ top, left, right }) => top === number && column >= left && column <= right);
  return row.cells.flatMap((cell, index) => {
    if (typeof cell?.value !== 'string' || isMerged(index + 1)) return [];
    const look: CellStyle = styles[cell.style ?? ''] ?? {};
    const own = widths[index] ?? 8;
    if (look.wrap) return heightOf([cell.value], [own]) <= (row.height ?? 15) ? [] : [cell.value];
    const next = row.cells.findIndex((other, at) => at > index && other !== undefined);
    const room = widths.slice(index, next < 0 ? undefined : next).reduce((sum, width) => sum + width, 0);
    return next < 0 || widthOfText(cell.value) <= room ? [] : [cell.value];
  });
}

describe.each(['Replay', 'Run-up'])('the sheet %s', (name) => {
  const sheet = sheetOf(name);
  const rows = [...sheet.rows()];

  it('shows every level at the step of the monitor or one digit finer', () => {
    expect(report.channels.find(({ tag }) => tag.startsWith('K101'))?.unit).toBe('mil');
    const decimals = rows.flatMap(({ cells }) =>
      cells.flatMap((cell) => {
        const format = sheet.styles[cell?.style ?? '']?.numberFormat ?? '';
        return /^level/u.test(cell?.style ?? '') ? [/\.(0+)/u.exec(format)?.[1]?.length ?? 0] : [];
      }),
    );
    expect(decimals.length).toBeGreaterThan(50);
    expect([...new Set(decimals)]).toEqual([step + 1]);
  });

  it('clips no text', () => {
    const long = rows.flatMap((row, index) => clipped(sheet, row, index + 1));
    expect(long).toEqual([]);
  });
});
