import fc from 'fast-check';
import { unzipSync, zipSync, type Zippable } from 'fflate';
import { describe, expect, it } from 'vitest';
import type { Axis } from '../../../../src/hosts/file/patch/move/axis.ts';
import { movedWorkbook } from '../../../../src/hosts/file/patch/move/movedWorkbook.ts';
import { patchWorkbook } from '../../../../src/hosts/file/patch/patchWorkbook.ts';
import { readSettings } from '../../../../src/hosts/file/patch/settings/readSettings.ts';
import { withSettings } from '../../../../src/hosts/file/patch/settings/writeSettings.ts';
import { viewWorkbook } from '../../../../src/hosts/file/view/viewWorkbook.ts';
import { collect } from '../../../../src/hosts/file/zip/collect.ts';
import { FileRefused } from '../../../../src/hosts/file/zip/refused.ts';
import { damage, inflict } from '../../../fuzz/damage.ts';
import { everythingParts } from '../../../fixtures/workbooks/everything.ts';
import { zipParts } from '../../../fixtures/workbooks/package.ts';
import { styledWorkbook } from '../view/styled.ts';
import { patched } from './patched.ts';

/** The result, or undefined where it was refused in one line; anything else thrown fails the test. */
function unlessRefused<T>(run: () => T): T | undefined {
  try {
    return run();
  } catch (error) {
    if (!(error instanceof FileRefused)) throw error;
    expect(error.message).toMatch(/^[^\p{Cc}\p{Zl}\p{Zp}]{20,300}$/u);
    return undefined;
  }
}

const books = [unzipSync(zipParts(everythingParts())), unzipSync(styledWorkbook())];
const cells = [
  { row: 2, column: 2, value: 'new' },
  { row: 40, column: 3, value: 1, formula: 'TRIPDRIFT.SHIFT(A1,2)' },
];

describe('a damaged workbook', () => {
  it('is seen and patched, or refused in one line; what was patched can be seen', () => {
    const parts = fc.constantFrom(
      ...books.flatMap((book, index) =>
        Object.keys(book)
          .filter((name) => /sheet\d\.xml$|workbook\.xml|styles|theme|table1|Content|rels$/.test(name))
          .map((name) => ({ index, name })),
      ),
    );
    const counts = { refused: 0, patched: 0 };
    fc.assert(
      fc.property(parts, fc.array(damage, { minLength: 1, maxLength: 3 }), ({ index, name }, harms) => {
        const entries: Zippable = { ...books[index] };
        entries[name] = harms.reduce(inflict, books[index]?.[name] ?? new Uint8Array());
        const bytes = zipSync(entries, { level: 0 });
        const view = unlessRefused(() => viewWorkbook('f.xlsx', bytes));
        const sheet = view?.sheets[0]?.name;
        const copy = sheet === undefined ? undefined : unlessRefused(() => patched(bytes, sheet, cells));
        if (copy === undefined) counts.refused++;
        else {
          counts.patched++;
          const rows = viewWorkbook('f.xlsx', copy).sheets[0]?.rows;
          expect(rows?.find(({ row }) => row === 40)?.cells.find(({ column }) => column === 3)?.value).toBe(
            1,
          );
        }
      }),
      { numRuns: 1200, seed: 20260302 },
    );
    expect(counts.refused).toBeGreaterThan(100);
    expect(counts.patched).toBeGreaterThan(100);
  });

  it('is restyled, moved and given settings, or refused in one line; what came of it can be seen', () => {
    const parts = fc.constantFrom(
      ...books.flatMap((book, index) =>
        Object.keys(book)
          .filter((name) => /\.(xml|rels|vml)$/.test(name))
          .map((name) => ({ index, name })),
      ),
    );
    const axis = fc.constantFrom<Axis>(
      [],
      [{ at: 2, removed: 0, inserted: 2 }],
      [{ at: 3, removed: 2, inserted: 0 }],
      [{ at: 6, removed: 1, inserted: 1 }],
    );
    const harms = fc.array(damage, { minLength: 1, maxLength: 2 });
    const counts = { refused: 0, made: 0 };
    fc.assert(
      fc.property(parts, harms, axis, axis, ({ index, name }, done, rows, columns) => {
        const entries: Zippable = { ...books[index] };
        entries[name] = done.reduce(inflict, books[index]?.[name] ?? new Uint8Array());
        const bytes = zipSync(entries, { level: 0 });
        const sheet = unlessRefused(() => viewWorkbook('f.xlsx', bytes))?.sheets[0]?.name;
        const copy =
          sheet === undefined
            ? undefined
            : unlessRefused(() => {
                const moved = movedWorkbook(bytes, [{ sheet, rows, columns }]).bytes;
                const { sink, bytes: collected } = collect();
                const looks = [{ row: 40, column: 3, change: { bold: true, align: 'center' as const } }];
                const widths = [{ first: 2, last: 4, width: 30, hidden: false }];
                const edits = { sheet, cells, looks, columns: widths, rows: [{ row: 40, height: 20 }] };
                patchWorkbook(moved, [edits], [], sink);
                return withSettings(collected(), new Map([['key', '1']]));
              });
        if (copy === undefined) {
          counts.refused++;
          return;
        }
        counts.made++;
        expect(readSettings(copy).get('key')).toBe('1');
        const { sheets, styles } = viewWorkbook('f.xlsx', copy);
        const row = sheets[0]?.rows.find((one) => one.row === 40);
        expect(row?.height).toBe(20);
        const cell = row?.cells.find(({ column }) => column === 3);
        expect(cell?.value).toBe(1);
        // A file whose styles are lost keeps its cells plain.
        if (cell?.style !== 0)
          expect(styles[cell?.style ?? 0]).toMatchObject({ bold: true, align: 'center' });
      }),
      { numRuns: 1200, seed: 20260303 },
    );
    expect(counts.refused).toBeGreaterThan(100);
    expect(counts.made).toBeGreaterThan(100);
  });
});
