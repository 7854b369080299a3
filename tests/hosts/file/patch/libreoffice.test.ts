import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, it } from 'vitest';
import type { EditedCell } from '../../../../src/hosts/file/patch/types.ts';
import { everythingParts } from '../../../fixtures/workbooks/everything.ts';
import { zipParts } from '../../../fixtures/workbooks/package.ts';
import { convert, describeWithLibreOffice } from '../../../libreoffice.ts';
import { resultSheet } from '../write/model.ts';
import { cellsOf, patched, withRows } from './patched.ts';

const hostile = [
  '=1+1',
  '@SUM(A1)',
  '<img src=x onerror=alert(1)>',
  '&amp; ]]> <![CDATA[ "\'',
  ' loose  space ',
  'line\nbreak\ttab',
  '_x000D_ and _x005F_',
  '{r}$&$1',
  '日本語 😀 µm',
];

describeWithLibreOffice('a patched copy in LibreOffice', () => {
  const folder = mkdtempSync(join(tmpdir(), 'patched-'));
  afterAll(() => {
    rmSync(folder, { recursive: true, force: true });
  });

  /** What LibreOffice makes of a workbook, as it saves it. */
  function through(name: string, bytes: Uint8Array, extension = 'xlsx'): Uint8Array {
    const path = join(folder, `${name}.${extension}`);
    writeFileSync(path, bytes);
    return readFileSync(convert(path, 'xlsx', join(folder, 'out')));
  }

  it('shows the edited values, calculates the formulas, and keeps the rest', () => {
    // Formulas without a stored result are calculated when the file is opened.
    const edits: EditedCell[] = [
      { row: 2, column: 3, value: 150 },
      { row: 2, column: 4, value: null, formula: 'C2*3' },
      { row: 3, column: 4, value: 'gone' },
      { row: 6, column: 6, value: null, formula: 'NORM.S.INV(0.5)+SUM(C2:C3)' },
      { row: 8, column: 2, value: null, formula: 'IFNA(#N/A,"none")&"TRIPDRIFT.X("' },
      { row: 9, column: 1, value: null, formula: 'C2:D2*2', array: { top: 9, left: 1, bottom: 9, right: 2 } },
    ];
    const original = zipParts(everythingParts({ macros: true }));
    const before = cellsOf(through('before', original, 'xlsm'));
    const after = cellsOf(through('after', patched(original, 'Channels', edits, [resultSheet()]), 'xlsm'));
    const values = (address: string): unknown => after[address]?.value;
    expect(values('C2')).toBe(150);
    expect(values('D2')).toBe(450);
    expect(values('D3')).toBe('gone');
    expect(values('F6')).toBe(310);
    expect(values('B8')).toBe('noneTRIPDRIFT.X(');
    expect(['A9', 'B9'].map(values)).toEqual([300, 900]);
    const edited = new Set(['C2', 'D2', 'D3', 'F6', 'B8', 'A9', 'B9']);
    for (const [address, cell] of Object.entries(before)) {
      if (!edited.has(address))
        expect([address, after[address]?.value, after[address]?.formula]).toEqual([
          address,
          cell.value,
          cell.formula,
        ]);
    }
  });

  it('calculates formulas that shared one with an edited cell', () => {
    const rows = [1, 2, 3, 4].map(
      (row) =>
        `<row r="${row}"><c r="A${row}"><v>${row}</v></c><c r="B${row}"><f t="shared"${row === 1 ? ' ref="B1:B4"' : ''} si="0">${row === 1 ? 'A1*10+$A$4' : ''}</f></c></row>`,
    );
    const copy = patched(withRows(rows.join('')), 'Channels', [{ row: 1, column: 2, value: 'x' }]);
    const cells = cellsOf(through('shared', copy));
    expect(['B1', 'B2', 'B3', 'B4'].map((address) => cells[address]?.value)).toEqual(['x', 24, 34, 44]);
  });

  it('has hostile text as text', () => {
    const edits = hostile.map((value, index): EditedCell => ({ row: index + 1, column: 2, value }));
    const cells = cellsOf(through('hostile', patched(withRows(''), 'Channels', edits)));
    expect(hostile.map((_, index) => cells[`B${index + 1}`]?.value)).toEqual(hostile);
    expect(Object.values(cells).some(({ formula }) => formula !== undefined)).toBe(false);
  });
});
