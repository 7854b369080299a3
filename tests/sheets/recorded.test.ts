import { describe, expect, it } from 'vitest';
import { audit } from '../../src/audit/audit.ts';
import { heightOf } from '../../src/sheets/style/lines.ts';
import { widthOfText } from '../../src/sheets/style/textWidth.ts';
import type { CellStyle, ModelRow, SheetModel } from '../../src/sheets/model.ts';
import { resultSheets } from '../../src/sheets/resultSheets.ts';
import { book } from '../audit/book.ts';
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

it('names the machine and what the sensitivity was told by where a threshold acts at running speed', () => {
  // Measured at 90 and 80 mV/(in/s) at 1000 and 1400 r/min: 85 at 1200, where 0.5 in/s act at 0.5·100/85 = 0.588.
  const told = audit(
    book(
      [
        'Channels',
        [
          ['Tag', 'Machine', 'Kind', 'Measured sensitivity (mV/(in/s))', 'Speed (r/min)'],
          ['T', 'Fan 7', 'velocity', 100, 1200],
        ],
      ],
      [
        'Monitor',
        [
          ['Tag', 'Configured sensitivity (mV/(in/s))', 'Alert (in/s pk)', 'Danger (in/s pk)'],
          ['T', 100, 0.45, 0.5],
        ],
      ],
      [
        'Against speed',
        [
          ['Tag', 'Speed (r/min)', 'Sensitivity (mV/(in/s))'],
          ['T', 1000, 90],
          ['T', 1400, 80],
        ],
      ],
    ),
  );
  const rows = [
    ...resultSheets(told)
      .find((sheet) => sheet.name === 'Run-up')!
      .rows(),
  ];
  const valuesOf = ({ cells }: ModelRow) => cells.map((cell) => cell?.value ?? null);
  const titles = rows.map(valuesOf).find((values) => values[0] === 'Tag')!;
  const line = rows.map(valuesOf).find((v) => v.includes('at running speed') && v.includes('danger'))!;
  const under = (title: string) => line[titles.indexOf(title)];
  expect(under('Machine')).toBe('Fan 7');
  expect(under('Sensitivity by')).toBe('record against speed');
  expect(under('Really, where it acts')).toBeCloseTo((0.5 * 100) / 85, 12);
});
