import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { audit } from '../../../src/audit/audit.ts';
import { canonicalNumber } from '../../../src/audit/evidence/canonical.ts';
import { CellHash } from '../../../src/audit/evidence/cellHash.ts';
import { textHash, shortId } from '../../../src/audit/evidence/fingerprint.ts';
import { defaultPolicy } from '../../../src/audit/model/policy.ts';
import { DateCell, ErrorCell, PercentCell, type Cell } from '../../../src/cells/cell.ts';
import type { Sheet, Workbook } from '../../../src/cells/sheet.ts';
import { plant } from '../../sheets/plant.ts';
import { sheetOf, workbookOf } from '../../sheets/tables.ts';
import '../../seed.ts';

const now = new Date('2025-03-14T08:05:00Z');
const inputsOf = (workbook: Workbook) => audit(workbook, { now }).fingerprint.inputs;

function withCell(workbook: Workbook, on: number, row: number, column: number, cell: Cell): Workbook {
  const edit = (sheet: Sheet): Sheet => ({
    ...sheet,
    rows: sheet.rows.map((cells, index) =>
      index === row
        ? Array.from({ length: Math.max(cells.length, column + 1) }, (_, at) =>
            at === column ? cell : (cells[at] ?? null),
          )
        : cells,
    ),
  });
  return { ...workbook, sheets: workbook.sheets.map((sheet, index) => (index === on ? edit(sheet) : sheet)) };
}

// FIPS 180-4, examples of SHA-256 as NIST publishes them (from memory, and confirmed by node:crypto beside them).
describe('SHA-256', () => {
  const examples = [
    ['abc', 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'],
    [
      'abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq',
      '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1',
    ],
    ['a'.repeat(1_000_000), 'cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0'],
    ['', 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855'],
  ] as const;

  it.each(examples)('of an example of the standard', (text, hex) => {
    expect(textHash(text)).toBe(hex);
  });

  it('agrees with node:crypto on any text', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 300 }), (text) => {
        expect(textHash(text)).toBe(createHash('sha256').update(text, 'utf8').digest('hex'));
      }),
    );
  });
});

/** The bytes of cells as documented, by Node's own buffers. */
function bytesOf(cell: Cell): Buffer {
  if (cell === null) return Buffer.from([0]);
  if (typeof cell === 'number') {
    const bytes = Buffer.from([1, 0, 0, 0, 0, 0, 0, 0, 0]);
    bytes.writeDoubleLE(cell, 1);
    return bytes;
  }
  if (typeof cell === 'string' && cell.trim() === '') return Buffer.from([0]);
  if (typeof cell === 'boolean') return Buffer.from([cell ? 3 : 4]);
  const text = Buffer.from(typeof cell === 'string' ? cell : (cell as ErrorCell).code, 'utf8');
  const head = Buffer.from([typeof cell === 'string' ? 2 : 5, 0, 0, 0, 0]);
  head.writeUInt32LE(text.length, 1);
  return Buffer.concat([head, text]);
}

const anyCell = fc.oneof(
  fc.constant(null),
  fc.boolean(),
  fc.integer(),
  fc.integer({ min: -1e8, max: 1e8 }).map((value) => value / 1000),
  fc.string({ unit: 'grapheme' }).filter((text) => !text.includes('\r')),
  fc.constantFrom('x'.repeat(32_767), 'µ'.repeat(32_767), '\u0001\u0002', '   ', '=1+1', 'naïve ✓'),
  fc.constantFrom('#N/A', 'no stored result').map((code) => new ErrorCell(code)),
);

describe('cells as bytes', () => {
  it('are those documented, in any number and length', () => {
    fc.assert(
      fc.property(fc.array(anyCell, { maxLength: 60 }), (cells) => {
        const hash = new CellHash(12);
        for (const cell of cells) hash.cell(cell);
        const expected = createHash('sha256')
          .update(Buffer.concat(cells.map(bytesOf)))
          .digest('hex');
        expect(hash.hex()).toBe(expected);
      }),
      { numRuns: 300 },
    );
  });

  const of = (cell: Cell): string => {
    const hash = new CellHash(12);
    hash.cell(cell);
    return hash.hex();
  };

  it.each<[string, Cell, Cell]>([
    ['a percentage and its number', new PercentCell(3), 0.03],
    ['a date and its number', new DateCell(20_000), 45_569],
    ['a sum and what people see', 0.1 + 0.2, 0.3],
    ['both zeros', -0, 0],
    ['both line breaks', 'a\r\nb', 'a\nb'],
    ['blanks and nothing', '  \t', null],
  ])('are the same for %s', (_what, one, other) => {
    expect(of(one)).toBe(of(other));
  });

  it.each<[string, Cell, Cell]>([
    ['a text and its number', '5', 5],
    ['yes and 1', true, 1],
    ['an error and its text', new ErrorCell('#N/A'), '#N/A'],
    ['no number and nothing', NaN, null],
    ['no number and endless', NaN, Infinity],
    ['numbers that differ in the twelfth digit', 1.000_000_000_01, 1.000_000_000_02],
    ['upper and lower case', 'V-1', 'v-1'],
  ])('differ for %s', (_what, one, other) => {
    expect(of(one)).not.toBe(of(other));
  });

  // The rounding of ECMAScript's own toPrecision is the outside check.
  it.each([9, 12])('a number to %s digits is what its 15 stored digits give', (digits) => {
    const usual = fc.double({ min: -1e6, max: 1e6, noNaN: true });
    const any = fc.double({ noNaN: true, noDefaultInfinity: true });
    // Digits that end in 4995, 5, 50005 …: near the middle between two steps.
    const middle = fc
      .tuple(
        fc.integer({ min: 1, max: 999_999_999 }),
        fc.constantFrom('000500', '499950', '499999', '500001', '5'),
      )
      .map(([head, tail]) => Number(`${head % 9}.${head}${tail}`));
    fc.assert(
      fc.property(fc.oneof(usual, any, middle), (value) => {
        const stored = Number(value.toPrecision(15));
        expect(canonicalNumber(stored, digits)).toBe(canonicalNumber(value, digits));
        expect(canonicalNumber(value, digits)).toBe(Number(stored.toPrecision(digits)) + 0);
      }),
      { numRuns: 5_000 },
    );
  });
});

describe('the fingerprint of the inputs', () => {
  const book = workbookOf(plant);
  const original = inputsOf(book);

  it('changes with any single cell of either table', () => {
    const rows = book.sheets[0]?.rows.length ?? 0;
    const columnsOf = (on: number) => book.sheets[on]?.rows[0]?.length ?? 0;
    const at = { on: fc.nat(1), row: fc.integer({ min: 1, max: rows - 1 }), place: fc.nat(999) };
    fc.assert(
      fc.property(fc.record({ ...at, cell: anyCell }), ({ on, row, place, cell }) => {
        const column = place % columnsOf(on);
        const before = book.sheets[on]?.rows[row]?.[column] ?? null;
        const said = before instanceof PercentCell ? before.percent / 100 : before;
        const blank = (one: Cell) => one === null || (typeof one === 'string' && one.trim() === '');
        fc.pre(cell !== said && !(blank(cell) && blank(before)));
        expect(inputsOf(withCell(book, on, row, column, cell))).not.toBe(original);
      }),
      { numRuns: 200 },
    );
  });

  it('does not change with other sheets, where a table stands, or columns that mean nothing here', () => {
    const [channels, monitor] = book.sheets;
    if (!channels || !monitor) throw new Error('two sheets');
    const other = sheetOf('Notes', [['Anything'], [1]]);
    const moved = sheetOf('Channels', [[], ['Plant 1'], ...channels.rows.map((row) => [null, ...row])]);
    const wider = sheetOf(
      'Monitor',
      monitor.rows.map((row, index) => [...row, index === 0 ? 'Shelf' : index]),
    );
    const earlier = sheetOf('Audit results', [['Tripdrift audit – results · 0000-0000'], ['Tag']]);
    const variants = [
      [monitor, other, channels],
      [other, channels, monitor],
      [moved, monitor],
      [channels, wider],
      [channels, monitor, earlier],
    ];
    for (const sheets of variants) expect(inputsOf({ name: 'other.xlsx', sheets })).toBe(original);
  });

  it('changes with a header, the order of the rows, a row more or less, the name of a sheet, and the column map', () => {
    const [channels, monitor] = book.sheets;
    if (!channels || !monitor) throw new Error('two sheets');
    const [header = [], first = [], ...rest] = channels.rows;
    const units = header.map((cell) => (cell === 'Speed (r/min)' ? 'Speed (Hz)' : cell));
    const variants = [
      [units, first, ...rest],
      [header, ...rest, first],
      [header, ...rest],
    ];
    const all = variants.map((rows) => inputsOf({ ...book, sheets: [sheetOf('Channels', rows), monitor] }));
    all.push(inputsOf({ ...book, sheets: [{ ...channels, name: 'List' }, monitor] }));
    all.push(audit(book, { now, map: { channels: { sheet: 'Channels' } } }).fingerprint.inputs);
    expect(new Set([original, ...all]).size).toBe(all.length + 1);
  });

  it('counts calibration records', () => {
    const records = (volts: number) =>
      sheetOf('Records', [
        ['Tag', 'Gap (mil)', 'Output (V)'],
        ...[10, 20, 30, 40, 50, 60].map((gap): Cell[] => [
          plant[0]?.tag ?? '',
          gap,
          gap === 60 ? volts : -gap / 5,
        ]),
      ]);
    const withRecord = (volts: number) => inputsOf({ ...book, sheets: [...book.sheets, records(volts)] });
    expect(new Set([original, withRecord(-12), withRecord(-12.01)]).size).toBe(3);
    expect(inputsOf({ ...book, sheets: [records(-12), ...book.sheets] })).toBe(withRecord(-12));
  });

  it('counts histories of readings', () => {
    const tag = plant[0]?.tag ?? '';
    const withHistory = (day: Cell, value: Cell) =>
      inputsOf({
        ...book,
        sheets: [
          ...book.sheets,
          sheetOf('History', [
            ['Tag', 'Date', 'Sensitivity (mV/mil)'],
            [tag, '2024-03-01', 199],
            [tag, day, value],
          ]),
        ],
      });
    const all = [
      withHistory('2025-03-01', 198),
      withHistory('2025-03-01', 197),
      withHistory('2025-03-02', 198),
      withHistory('2025-03-01', 'none'),
    ];
    expect(new Set([original, ...all]).size).toBe(5);
  });
});

describe('the fingerprint of the policy and the short id', () => {
  it('the policy counts, not the order of its JSON', () => {
    const book = workbookOf(plant);
    const of = (policy: typeof defaultPolicy) => audit(book, { now, policy }).fingerprint.policy;
    const turned = Object.fromEntries(Object.entries(defaultPolicy).toReversed()) as typeof defaultPolicy;
    expect(of(turned)).toBe(of(defaultPolicy));
    expect(of({ ...defaultPolicy, tolerance: 0.06 })).not.toBe(of(defaultPolicy));
  });

  it('the short id tells audits apart by inputs, policy and time', () => {
    const fingerprint = { inputs: 'a', policy: 'b' };
    const id = shortId({ fingerprint, generated: '2025-03-14T08:05:00.000Z' });
    const expected = createHash('sha256').update('a\nb\n2025-03-14T08:05:00.000Z').digest('hex');
    expect(id).toBe(`${expected.slice(0, 4)}-${expected.slice(4, 8)}`);
  });
});
