// Whatever bytes come in, reading ends with a table or with one plain line saying why not.
import fc from 'fast-check';
import { strToU8, type Zippable, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import type { Sheet } from '../../src/cells/sheet.ts';
import { readCsv } from '../../src/hosts/file/read/csv.ts';
import { readWorkbook } from '../../src/hosts/file/read/workbook.ts';
import { FileRefused } from '../../src/hosts/file/zip/refused.ts';
import { bookParts, stylesOf, zip } from '../hosts/file/read/book.ts';
import { damage, inflict, overwriting } from './damage.ts';

const parts = bookParts({
  sheets: [
    {
      name: 'Channels',
      data:
        '<row r="1"><c r="A1" t="s"><v>0</v></c><c r="B1" t="s"><v>1</v></c><c r="C1" t="inlineStr"><is><r><t>Da</t></r><r><t>te</t></r></is></c></row>' +
        '<row r="2" hidden="1"><c r="A2" t="str"><f>"VT"&amp;1</f><v>VT1</v></c><c r="B2" s="1"><v>0.07</v></c><c r="C2" s="0"><v>46082.5</v></c></row>' +
        '<row r="3"><c r="A3"/><c r="B3" t="b"><v>1</v></c><c r="C3" t="e"><v>#N/A</v></c><c t="d"><v>2026-03-01</v></c></row>' +
        '<row><c><v>-1.5E-3</v></c></row>',
      after: '<mergeCells count="1"><mergeCell ref="A2:A3"/></mergeCells>',
      tables: ['<table id="1" name="t" displayName="Channels" ref="A1:C3" totalsRowCount="0"/>'],
    },
    { name: 'Monitor', data: '<row r="5"><c r="E5"><v>5</v></c></row>', state: 'hidden' },
  ],
  strings: '<si><t>Tag</t></si><si><r><t>Sens</t></r><rPh sb="0" eb="1"><t>x</t></rPh></si>',
  styles: stylesOf(['yyyy\\-mm\\-dd', '0.0%']),
});
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
      const entries: Zippable = {};
      for (const each of names) {
        const part = strToU8(String(parts[each]));
        entries[each] = [each === name ? list.reduce(inflict, part) : part, { level: 0 }];
      }
      return readBook(zipSync(entries));
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
    const text = strToU8('\ufeffTag;"Sens; ""x""";µm\r\nVT-1;7,87;"a\nb"\n\n007;0,5;\n');
    const inPlace = fc.array(overwriting, { minLength: 1, maxLength: 3 });
    const counts = tally(fc.oneof(harms, inPlace), 12_000, (list) =>
      outcome(() => [readCsv('f.csv', list.reduce(inflict, text))]),
    );
    expect(counts.get('read')).toBeGreaterThan(100);
    expect(counts.size).toBeGreaterThan(3);
  });
});
