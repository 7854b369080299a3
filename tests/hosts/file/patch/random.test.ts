import fc from 'fast-check';
import { SaxesParser } from 'saxes';
import { describe, expect, it } from 'vitest';
import { columnLetters } from '../../../../src/cells/address.ts';
import type { EditedCell } from '../../../../src/hosts/file/patch/types.ts';
import { partText } from '../write/parts.ts';
import { cellsOf, patched, withRows } from './patched.ts';

const most = { rows: 6, columns: 5 };
const place = {
  row: fc.integer({ min: 1, max: most.rows }),
  column: fc.integer({ min: 1, max: most.columns }),
};
const text = fc.string({
  unit: fc.constantFrom('a', '<', '&', '"', "'", '=', ' ', '\n', '\u0001', '_x0041_', '😀', ']]>'),
});

/** A stored cell: a number, a formula of its own, or a part of one of two shared formulas. */
const stored = fc.record({ ...place, kind: fc.constantFrom('number', 'plain', 'shared 0', 'shared 1') });

const edit: fc.Arbitrary<EditedCell> = fc.oneof(
  fc.record({
    ...place,
    value: fc.oneof(
      fc.double({ noNaN: true, noDefaultInfinity: true }),
      text,
      fc.boolean(),
      fc.constant(null),
    ),
  }),
  fc.record({
    ...place,
    value: fc.integer(),
    formula: fc.constantFrom('A1+1', 'TRIPDRIFT.SHIFT(A1,"<&")', 'XLOOKUP(1,A:A,B:B)', '"_xlfn."&A1'),
  }),
);

interface Shown {
  readonly value: unknown;
  readonly formula?: string;
}

/** Rows as markup and what they show; a shared formula is that of its first cell, `A<row>` of the same row. */
function layout(
  cells: readonly { row: number; column: number; kind: string }[],
  statesPlaces: boolean,
): { markup: string; shown: Record<string, Shown> } {
  const shown: Record<string, Shown> = {};
  const begun = new Set<string>();
  let markup = '';
  for (let row = 1; row <= most.rows; row++) {
    const inRow = cells.filter((cell) => cell.row === row).sort((a, b) => a.column - b.column);
    if (inRow.length === 0 && row % 2 === 0) continue;
    const body = inRow.map(({ column, kind }) => {
      const address = `${columnLetters(column)}${row}`;
      const follows = inRow.some((cell) => cell.column === column - 1) || column === 1;
      const start = `<c${statesPlaces || !follows ? ` r="${address}"` : ''}>`;
      if (kind === 'number') {
        shown[address] = { value: row * 10 + column };
        return `${start}<v>${row * 10 + column}</v></c>`;
      }
      const formula = `$A${row}*2`;
      shown[address] = { value: 1, formula };
      if (kind === 'plain') return `${start}<f>${formula}</f><v>1</v></c>`;
      const si = kind.slice(-1);
      const holds = !begun.has(si);
      begun.add(si);
      return `${start}<f t="shared" si="${si}"${holds ? ` ref="A1:E6">${formula}` : '>'}</f><v>1</v></c>`;
    });
    markup += `<row r="${row}">${body.join('')}</row>`;
  }
  return { markup, shown };
}

/** Addresses of rows and cells in the order of the text, by saxes. */
function order(xml: string): number[] {
  const found: number[] = [];
  const parser = new SaxesParser();
  let row = 0;
  let column = 0;
  parser.on('opentag', ({ name, attributes }) => {
    if (name === 'row') {
      row = Number(attributes['r']);
      column = 0;
      found.push(row * 1000);
    }
    if (name !== 'c') return;
    const letter = /^[A-Z]/.exec(attributes['r'] ?? '')?.[0];
    column = letter === undefined ? column + 1 : letter.charCodeAt(0) - 64;
    found.push(row * 1000 + column);
  });
  parser.write(xml).close();
  return found;
}

describe('any cells edited in any sheet', () => {
  it('show what was asked for, in order, and nothing else changes', () => {
    const cells = fc.uniqueArray(stored, {
      maxLength: 20,
      selector: ({ row, column }) => row * 100 + column,
    });
    fc.assert(
      fc.property(cells, fc.array(edit, { maxLength: 8 }), fc.boolean(), (had, edits, statesPlaces) => {
        const { markup, shown } = layout(had, statesPlaces);
        for (const { row, column, value, formula } of edits) {
          const address = `${columnLetters(column)}${row}`;
          if (value === null || value === '') Reflect.deleteProperty(shown, address);
          else
            shown[address] = {
              value: Object.is(value, -0) ? 0 : value,
              ...(formula === undefined ? {} : { formula }),
            };
        }
        const copy = patched(withRows(markup), 'Channels', edits);
        const seen = Object.entries(cellsOf(copy)).map(([address, { value, formula }]) => [
          address,
          formula === undefined ? { value } : { value, formula },
        ]);
        expect(Object.fromEntries(seen)).toEqual(shown);
        const places = order(partText(copy, 'xl/worksheets/sheet1.xml'));
        expect(places).toEqual([...new Set(places)].sort((a, b) => a - b));
      }),
      { numRuns: 600 },
    );
  });
});
