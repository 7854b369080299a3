// Whatever bytes come in, reading ends with a table or with one plain line saying why not.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Sheet } from '../../src/cells/sheet.ts';
import { readCsv } from '../../src/hosts/file/read/csv.ts';
import { readWorkbook } from '../../src/hosts/file/read/workbook.ts';
import { FileRefused } from '../../src/hosts/file/zip/refused.ts';
import { zip } from '../hosts/file/read/book.ts';
import { damage, inflict, overwriting } from './damage.ts';
import { damagedIn, wholeParts, wholeTable } from './damagedFiles.ts';

const parts = wholeParts;
const names = Object.keys(parts);

/** `read`, or the message of the refusal; anything else thrown fails the test. */
function outcome(read: () => readonly Sheet[]): string {
  try {
    const sheets = read();
    expect(sheets.every((sheet) => Array.isArray(sheet.rows))).toBe(true);
    return 'read';
  } catch (error) {
    if (!(error instanceof FileRefused)) throw error;
    expect(error.message).toMatch(/^[^\p{Cc}\p{Zl}\p{Zp}]{20,300}$/u);
    return error.message;
  }
}

const readBook = (bytes: Uint8Array): string => outcome(() => readWorkbook('f.xlsx', bytes).sheets);
const harms = fc.array(damage, { minLength: 1, maxLength: 4 });

/** Runs the cases and returns how often each outcome came, so that a test can tell that it reached both. */
function tally<T>(cases: fc.Arbitrary<T>, numRuns: number, run: (value: T) => string): Map<string, number> {
  const counts = new Map<string, number>();
  const check = fc.property(cases, (value) => {
    const key = run(value);
    counts.set(key, (counts.get(key) ?? 0) + 1);
  });
  fc.assert(check, { seed: 20260301, numRuns });
  return counts;
}

describe('damaged workbooks', () => {
  it('in their zip', () => {
    const whole = zip(parts);
    const inPlace = fc.array(overwriting, { minLength: 1, maxLength: 3 });
    const counts = tally(fc.oneof(harms, inPlace), 12_000, (list) => readBook(list.reduce(inflict, whole)));
    expect(counts.get('read')).toBeGreaterThan(10);
    expect(counts.size).toBeGreaterThan(10);
  });

  it('in the XML of one part', () => {
    const cases = fc.record({ name: fc.constantFrom(...names), list: harms });
    const counts = tally(cases, 12_000, ({ name, list }) => {
      return readBook(damagedIn(name, list));
    });
    expect(counts.get('read')).toBeGreaterThan(100);
    expect(counts.size).toBeGreaterThan(100);
  });

  it('made of nothing but noise behind the right beginning', () => {
    const counts = tally(fc.uint8Array({ maxLength: 300 }), 2000, (noise) =>
      readBook(new Uint8Array([0x50, 0x4b, 3, 4, ...noise])),
    );
    expect(counts.has('read')).toBe(false);
  });
});

describe('damaged tables of plain text', () => {
  it('in any encoding', () => {
    const text = wholeTable;
    const inPlace = fc.array(overwriting, { minLength: 1, maxLength: 3 });
    const counts = tally(fc.oneof(harms, inPlace), 12_000, (list) =>
      outcome(() => [readCsv('f.csv', list.reduce(inflict, text))]),
    );
    expect(counts.get('read')).toBeGreaterThan(100);
    expect(counts.size).toBeGreaterThan(3);
  });
});
