import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, describe, expect, it } from 'vitest';
import { columnLetters } from '../../../../src/cells/address.ts';
import type { Axis } from '../../../../src/hosts/file/patch/move/axis.ts';
import { moved } from '../../../../src/hosts/file/patch/move/axis.ts';
import { movedWorkbook } from '../../../../src/hosts/file/patch/move/movedWorkbook.ts';
import { viewWorkbook } from '../../../../src/hosts/file/view/viewWorkbook.ts';
import { FileRefused } from '../../../../src/hosts/file/zip/refused.ts';
import { everythingParts } from '../../../fixtures/workbooks/everything.ts';
import { zipParts } from '../../../fixtures/workbooks/package.ts';
import { prefixed, smallParts, strictParts } from '../../../fixtures/workbooks/small.ts';
import { convert, describeWithLibreOffice } from '../../../libreoffice.ts';
import { objections } from '../write/validator.ts';
import { partText } from '../write/parts.ts';
import { cellsOf, changedParts, withRows } from './patched.ts';

const original = zipParts(everythingParts());
const sheetPart = 'xl/worksheets/sheet1.xml';

const inserted = (at: number, count: number): Axis => [{ at, removed: 0, inserted: count }];
const deleted = (at: number, count: number): Axis => [{ at, removed: count, inserted: 0 }];
const after = (rows: Axis, columns: Axis = [], bytes = original) =>
  movedWorkbook(bytes, [{ sheet: 'Channels', rows, columns }]);

// Where things go when rows and columns come and go: common practice of spreadsheet programs, no source.
describe('a workbook after two rows were inserted above the third', () => {
  const { bytes } = after(inserted(3, 2));
  const sheet = partText(bytes, sheetPart);

  it('has every cell with its look and formula at its new place', () => {
    const [before, now] = [cellsOf(original), cellsOf(bytes)];
    const place = (address: string): string =>
      address.replace(/\d+$/, (row) => String(Number(row) >= 3 ? Number(row) + 2 : row));
    const formula = (text: string | undefined) => text?.replace(/C(\d)/, (cell) => place(cell));
    expect(Object.keys(now).sort()).toEqual(Object.keys(before).map(place).sort());
    for (const [address, cell] of Object.entries(before)) {
      const expected = { ...cell, ...(cell.formula !== undefined && { formula: formula(cell.formula) }) };
      expect(now[place(address)]).toEqual(expected);
    }
  });

  it('has its table, conditional formats, rules for input and names over the same cells', () => {
    expect(partText(bytes, 'xl/tables/table1.xml')).toMatch(/ ref="A1:D7".*<autoFilter ref="A1:D7"/);
    expect(sheet).toContain('<conditionalFormatting sqref="C2:C7">');
    expect(sheet).toContain('<xm:sqref>D2:D7</xm:sqref>');
    expect(sheet).toMatch(/<dataValidation type="list"[^>]* sqref="B2:B7">/);
    const book = partText(bytes, 'xl/workbook.xml');
    expect(book).toContain('>Channels!$C$2:$C$7<');
    expect(book).toContain('>Channels!$1:$1<');
  });

  it('has its charts and its pivot table look at the same cells', () => {
    const refs = (part: Uint8Array) =>
      [...partText(part, 'xl/charts/chart1.xml').matchAll(/<c:f>(.*?)<\/c:f>/g)].map(([, ref]) => ref);
    expect(refs(bytes)).toEqual(refs(original).map((ref) => ref?.replace('$5', '$7')));
    expect(refs(bytes).join()).toContain('$7');
    expect(partText(bytes, 'xl/pivotCache/pivotCacheDefinition1.xml')).toContain('ref="A1:C7"');
  });

  it('is accepted by the Open XML SDK, and leaves alone what knows nothing of places', () => {
    expect(objections(bytes)).toEqual([]);
    const changed = changedParts(original, bytes);
    for (const part of [
      'xl/styles.xml',
      'xl/worksheets/Sheet3.xml',
      'xl/media/image1.png',
      'docProps/app.xml',
    ]) {
      expect(changed).not.toContain(part);
    }
  });
});

describe('notes and drawings', () => {
  it('go with their cells, their boxes too', () => {
    const { bytes } = after(inserted(2, 3));
    expect(partText(bytes, 'xl/comments1.xml')).toMatch(/ref="B5".*ref="C5"/);
    expect(partText(bytes, 'xl/threadedComments/threadedComment1.xml')).toContain('ref="C5"');
    const boxes = partText(bytes, 'xl/drawings/vmlDrawing1.vml');
    expect(boxes.match(/<x:Row>4<\/x:Row>/g)).toHaveLength(2);
    expect(boxes).toContain('<x:Anchor>3, 15, 4, 10, 5, 15, 7, 4</x:Anchor>');
    const rows = (part: Uint8Array) =>
      [...partText(part, 'xl/drawings/drawing1.xml').matchAll(/<xdr:row>(\d+)</g)].map(([, row]) =>
        Number(row),
      );
    expect(rows(bytes)).toEqual(rows(original).map((row) => (row >= 1 ? row + 3 : row)));
    expect(objections(bytes)).toEqual([]);
  });

  it('go away with their cells', () => {
    const { bytes } = after(deleted(2, 1));
    expect(partText(bytes, 'xl/comments1.xml')).not.toContain('<comment ');
    expect(partText(bytes, 'xl/drawings/vmlDrawing1.vml')).not.toContain('<v:shape ');
    expect(partText(bytes, 'xl/tables/table1.xml')).toContain(' ref="A1:D4"');
    expect(cellsOf(bytes)['D2']?.formula).toBe('C2*2');
    expect(objections(bytes)).toEqual([]);
  });
});

describe('columns', () => {
  it('come before a table and after it', () => {
    const { bytes } = after([], [...inserted(1, 1), { at: 5, removed: 1, inserted: 0 }]);
    expect(partText(bytes, 'xl/tables/table1.xml')).toContain(' ref="B1:E5"');
    expect(cellsOf(bytes)['E2']?.formula).toBe('D2*2');
    expect(cellsOf(bytes)['D2']?.style).toBe(1);
    expect(partText(bytes, 'xl/workbook.xml')).toContain('>Channels!$D$2:$D$5<');
    expect(objections(bytes)).toEqual([]);
  });
});

describe('steps that would damage the file are refused with the cure', () => {
  it.each([
    ['a column in a table', [], inserted(3, 1), /column was inserted.*“ChannelTable”/],
    ['a column of a table', [], deleted(2, 1), /column was.*deleted.*A1:D5/],
    ['its headings', deleted(1, 1), [], /row of headings/],
    ['all of its rows', deleted(2, 4), [], /all rows were deleted/],
  ] as const)('%s', (_, rows, columns, message) => {
    expect(() => after(rows, columns)).toThrow(FileRefused);
    expect(() => after(rows, columns)).toThrow(message);
    expect(() => after(rows, columns)).toThrow(/Undo it/);
  });

  it('a pivot table', () => {
    const through = () =>
      movedWorkbook(original, [{ sheet: 'Pivot & more', rows: inserted(5, 1), columns: [] }]);
    expect(through).toThrow(/pivot table in A3:B6.*Undo/);
    const above = movedWorkbook(original, [
      { sheet: 'Pivot & more', rows: inserted(1, 1), columns: [] },
    ]).bytes;
    expect(partText(above, 'xl/pivotTables/pivotTable1.xml')).toContain('ref="A4:B7"');
    expect(objections(above)).toEqual([]);
  });

  it('a filter that hides rows', () => {
    const filtered = withRows('<row r="1"><c r="A1"><v>1</v></c></row>', {
      after:
        '<autoFilter ref="A1:C5"><filterColumn colId="2"><filters><filter val="1"/></filters></filterColumn></autoFilter>',
    });
    expect(() => after([], inserted(2, 1), filtered)).toThrow(/filtered range A1:C5.*clear the filter/);
    expect(partText(after(inserted(2, 1), [], filtered).bytes, sheetPart)).toContain('ref="A1:C6"');
  });
});

describe('around the rows', () => {
  it('widths, breaks, links and selections move, lists that are left empty go', () => {
    const book = withRows('<row r="4" ht="30" customHeight="1" spans="1:3"><c r="C4"><v>1</v></c></row>', {
      before:
        '<sheetViews><sheetView workbookViewId="0"><selection activeCell="B4" sqref="B4:C4 D9"/></sheetView></sheetViews><cols><col min="3" max="4" width="20" customWidth="1"/></cols>',
      after:
        '<mergeCells count="1"><mergeCell ref="A2:B2"/></mergeCells><hyperlinks><hyperlink ref="C4" location="Channels!C9" display="x"/></hyperlinks><rowBreaks count="2" manualBreakCount="2"><brk id="2" max="16383" man="1"/><brk id="6" max="16383" man="1"/></rowBreaks>',
    });
    expect(objections(book)).toEqual([]);
    const { bytes } = after(deleted(2, 1), inserted(3, 1), book);
    const text = partText(bytes, sheetPart);
    expect(text).toContain('<selection activeCell="B3" sqref="B3:D3 E8"/>');
    expect(text).toContain('<cols><col min="4" max="5" width="20" customWidth="1"/></cols>');
    expect(text).toContain('<row r="3" ht="30" customHeight="1"><c r="D3"><v>1</v></c></row>');
    expect(text).not.toContain('mergeCell');
    expect(text).toContain('<hyperlink ref="D3" location="Channels!D8" display="x"/>');
    expect(text).toContain(
      '<rowBreaks count="1" manualBreakCount="1"><brk id="5" max="16383" man="1"/></rowBreaks>',
    );
    expect(objections(bytes)).toEqual([]);
  });

  it('a strict workbook and one with prefixed elements move alike', () => {
    for (const parts of [strictParts(), prefixed(smallParts(), [sheetPart])]) {
      const before = zipParts(parts);
      const { bytes } = after(inserted(1, 1), [], before);
      expect(objections(bytes)).toEqual([]);
      const [sheet] = viewWorkbook('x.xlsx', bytes).sheets;
      expect(sheet?.rows.map(({ row }) => row - 1)).toEqual(
        viewWorkbook('x.xlsx', before).sheets[0]?.rows.map(({ row }) => row),
      );
    }
  });
});

describeWithLibreOffice('formulas after rows and columns moved, calculated by LibreOffice', () => {
  const folder = mkdtempSync(join(tmpdir(), 'moved-'));
  afterAll(() => {
    rmSync(folder, { recursive: true, force: true });
  });
  const calculated = (name: string, bytes: Uint8Array) => {
    const path = join(folder, `${name}.xlsx`);
    writeFileSync(path, bytes);
    return cellsOf(readFileSync(convert(path, 'xlsx', join(folder, 'out'))));
  };
  const size = { rows: 24, columns: 8 };
  const cell = (row: number, column: number): string => `${columnLetters(column)}${row}`;

  it('give what they gave', () => {
    const number = fc.integer({ min: 1, max: 12 });
    const place = fc.record({ row: number, column: fc.integer({ min: 1, max: 4 }), fixed: fc.boolean() });
    const refer = ({ row, column, fixed }: { row: number; column: number; fixed: boolean }) =>
      fixed ? `$${columnLetters(column)}$${row}` : cell(row, column);
    const formula = fc.oneof(
      fc.tuple(place, place).map(([one, other]) => `${refer(one)}*2+Channels!${refer(other)}`),
      fc.tuple(place, place).map(([one, other]) => `SUM(${refer(one)}:${refer(other)})`),
      fc.tuple(number, number).map(([one, other]) => `SUM(${one}:$${other})-MAX('Channels'!$A:D)`),
      place.map((one) => `IF(${refer(one)}>40,"A1",${refer(one)})`),
    );
    const steps = fc.array(
      fc.record({ gap: fc.integer({ min: 1, max: 5 }), count: fc.integer({ min: 1, max: 3 }) }),
      {
        maxLength: 3,
      },
    );
    const [sample] = fc.sample(
      fc.record({
        formulas: fc.array(formula, { minLength: 44, maxLength: 44 }),
        rows: steps,
        columns: steps,
      }),
      { numRuns: 1, seed: 20_250_314 },
    );
    const axis = (pieces: readonly { gap: number; count: number }[]): Axis => {
      let at = 0;
      return pieces.map(({ gap, count }) => ({ at: (at += gap), removed: 0, inserted: count }));
    };
    const { formulas, rows, columns } = sample!;
    // Numbers in A1:D12; formulas below and beside, without results, some of them shared.
    const markup = Array.from({ length: size.rows }, (_, index) => {
      const row = index + 1;
      const numbers = [1, 2, 3, 4].map(
        (column) => `<c r="${cell(row, column)}"><v>${row * 7 + column}</v></c>`,
      );
      const own = formulas.filter((__, at) => Math.floor(at / 4) + 14 === row);
      const below = own.map(
        (text, at) =>
          `<c r="${cell(row, at + 1)}"><f>${text.replaceAll('"', '&quot;').replace('>', '&gt;')}</f></c>`,
      );
      const shared = `<c r="${cell(row, 9)}"><f t="shared" si="0"${row === 1 ? ' ref="I1:I12"' : ''}>${row === 1 ? 'A1+$B1*C$2' : ''}</f></c>`;
      return `<row r="${row}">${row <= 12 ? [...numbers, shared].join('') : below.join('')}</row>`;
    });
    const before = withRows(markup.join(''));
    const move = { sheet: 'Channels', rows: axis(rows), columns: axis(columns) };
    const now = calculated('after', movedWorkbook(before, [move]).bytes);
    const expected = Object.entries(calculated('before', before));
    expect(expected.length).toBeGreaterThan(90);
    expect(rows.length + columns.length).toBeGreaterThan(1);
    const found = expected.map(([address]) => {
      const [, letters = '', row = ''] = /^([A-Z]+)(\d+)$/.exec(address) ?? [];
      const column = letters.charCodeAt(0) - 64;
      return [address, now[cell(moved(move.rows, Number(row))!, moved(move.columns, column)!)]?.value];
    });
    expect(found).toEqual(expected.map(([address, { value }]) => [address, value]));
  });
});
