import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, expect, it } from 'vitest';
import { straightLine } from '../../../src/method/record/straightLine.ts';
import type { SheetModel } from '../../../src/sheets/model.ts';
import { describeWithLibreOffice } from '../../libreoffice.ts';
import { recalculated } from '../../sheets/workbookFiles.ts';
import { relativeError } from '../ranges.ts';

const folder = mkdtempSync(join(tmpdir(), 'fits-'));
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

const POINTS = 10;

/** Records of ten points: gaps in mil from 5 to 100, volts of a chain with noise of up to 0.1 V, evenly spread. */
const records = fc.sample(
  fc.noBias(
    fc.tuple(
      fc.uniqueArray(fc.integer({ min: 50, max: 1000 }), { minLength: POINTS, maxLength: POINTS }),
      fc.double({ min: 0.1, max: 0.3, noNaN: true }),
      fc.array(fc.integer({ min: -1000, max: 1000 }), { minLength: POINTS, maxLength: POINTS }),
    ),
  ),
  { numRuns: 60 },
);
const fits = records.map(([tenths, sensitivity, noise]) => {
  const gaps = tenths.map((one) => one / 10);
  return { gaps, volts: gaps.map((gap, at) => 0.4 - sensitivity * gap + noise[at]! / 10_000) };
});

/** One record a row: ten gaps, ten voltages, and what the spreadsheet makes of them. */
const sheet: SheetModel = {
  name: 'Fits',
  widths: [],
  styles: {},
  formulas: [
    'SLOPE(K{r}:T{r},A{r}:J{r})',
    'INTERCEPT(K{r}:T{r},A{r}:J{r})',
    'STEYX(K{r}:T{r},A{r}:J{r})',
    'INDEX(LINEST(K{r}:T{r},A{r}:J{r},TRUE,TRUE),2,1)',
    'INDEX(LINEST(K{r}:T{r},A{r}:J{r},TRUE,TRUE),2,2)',
  ],
  rowCount: fits.length,
  rows: () =>
    fits.map(({ gaps, volts }) => ({
      cells: [
        ...[...gaps, ...volts].map((value) => ({ value })),
        ...[0, 1, 2, 3, 4].map((formula) => ({ value: null, formula })),
      ],
    })),
  print: { landscape: true },
};

// Source: LibreOffice's own SLOPE, INTERCEPT, STEYX and LINEST.
describeWithLibreOffice('the fit of a record', () => {
  it(`is LibreOffice's on ${fits.length} random records`, () => {
    const rows = recalculated([sheet], folder).sheets[0]!.rows;
    expect(rows).toHaveLength(fits.length);
    for (const [at, { gaps, volts }] of fits.entries()) {
      const line = straightLine(gaps, volts)!;
      const ours = [
        line.slope,
        line.intercept,
        line.residualDeviation,
        line.slopeUncertainty,
        line.interceptUncertainty,
      ];
      for (const [index, value] of ours.entries()) {
        const theirs = rows[at]![2 * POINTS + index];
        expect(typeof theirs).toBe('number');
        // An intercept near 0 is a small difference of large numbers; its scale is that of the voltages.
        const scale = index === 1 ? 1e-11 / Math.abs(value) : 1e-9;
        expect(relativeError(theirs as number, value)).toBeLessThan(Math.max(scale, 1e-11));
      }
    }
  });
});
