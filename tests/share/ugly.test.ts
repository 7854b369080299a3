import { describe, expect, it } from 'vitest';
import { shareWorkbook } from '../../src/share/shareWorkbook.ts';
import type { ShareFormulas } from '../../src/share/types.ts';
import { everythingParts } from '../fixtures/workbooks/everything.ts';
import { zipParts } from '../fixtures/workbooks/package.ts';
import { prefixed, smallParts, strictParts } from '../fixtures/workbooks/small.ts';
import { cellsOf, changedParts } from '../hosts/file/patch/patched.ts';
import { partText } from '../hosts/file/write/parts.ts';
import { objections } from '../hosts/file/write/validator.ts';
import { sharedBook } from './sharedBook.ts';

const share = (original: Uint8Array, formulas: ShareFormulas = 'values') =>
  shareWorkbook(original, { formulas, date: '2026-11-27' });

/** A workbook of one sheet with these rows, in the parts of `from`. */
function withSheet(rows: string, from = smallParts(), tail = ''): Record<string, string | Uint8Array> {
  const name = 'xl/worksheets/sheet1.xml';
  const sheet = String(from[name]).replace(
    /<sheetData>.*<\/sheetData>/,
    `<sheetData>${rows}</sheetData>${tail}`,
  );
  return { ...from, [name]: sheet };
}

const effective = (ref: string, given = '5,200,160', value = '<v>6.25</v>', attributes = ''): string =>
  `<c r="${ref}"><f${attributes}>_xldudf_TRIPDRIFT_EFFECTIVE(${given})</f>${value}</c>`;

describe('a copy to share', () => {
  it('of a workbook with one of nearly everything changes what it must, and nothing else', () => {
    const original = zipParts(everythingParts({ macros: true }));
    const { bytes, replaced } = share(original);
    expect(replaced).toEqual({ values: 1, native: 0 });
    expect(changedParts(original, bytes)).toEqual([
      '[Content_Types].xml',
      'xl/_rels/workbook.xml.rels',
      'xl/calcChain.xml',
      'xl/comments1.xml',
      'xl/drawings/vmlDrawing1.vml',
      'xl/worksheets/sheet1.xml',
    ]);
    expect(objections(bytes, 'xlsm')).toEqual([]);
    expect(partText(bytes, 'xl/comments1.xml')).toContain('Check with the vendor sheet');
  });

  it('of one without our functions is the same, byte for byte of its parts', () => {
    const original = zipParts(smallParts());
    const { bytes, notes } = share(original);
    expect(changedParts(original, bytes)).toEqual([]);
    expect(notes).toEqual(['No cell has a formula with a Tripdrift function.']);
  });

  it('tells the formula where a cell has a thread of comments', () => {
    const parts = everythingParts();
    const name = 'xl/worksheets/sheet1.xml';
    parts[name] = String(parts[name]).replace(/<c r="C2"[^>]*>.*?<\/c>/, effective('C2'));
    expect(share(zipParts(parts)).notes.join('\n')).toContain(
      'cell C2 has a thread of comments, beside which programs may not show the note: Was: =TRIPDRIFT.EFFECTIVE(5,200,160)',
    );
  });

  describe('of a file that was calculated without our functions', () => {
    const stored = (given: string, value: string, text = false): string =>
      `<c r="C1"${text ? ' t="str"' : ''}><f>${given}</f><v>${value}</v></c>`;
    const caught = (otherwise: string): string =>
      `IFERROR(_xldudf_TRIPDRIFT_EFFECTIVE(A1,200,160),${otherwise})`;
    const unknown = '<c r="D1" t="e"><f>_xldudf_TRIPDRIFT_EFFECTIVE(10,200,160)</f><v>#NAME?</v></c>';
    const shared = (cells: string, setpoint = '5') =>
      cellsOf(share(zipParts(withSheet(`<row r="1"><c r="A1"><v>${setpoint}</v></c>${cells}</row>`))).bytes);

    it('works out what IFERROR hides, whatever other formulas show', () => {
      // 5·200/160 = 6.25 and twice that
      expect(shared(stored(caught('0'), '0'))['C1']?.value).toBe(6.25);
      expect(shared(stored(caught('""'), '', true))['C1']?.value).toBe(6.25);
      expect(shared(stored(caught('A1'), '5') + unknown)['C1']?.value).toBe(6.25);
      expect(shared(stored(caught('0'), '0') + unknown)['D1']?.value).toBe(12.5);
    });

    it('keeps what stands for a refusal', () => {
      expect(shared(stored(caught('0'), '0'), '-5')['C1']?.value).toBe(0);
      expect(shared(stored(caught('0'), '0') + unknown, '-5')['C1']?.value).toBe(0);
    });

    it('keeps what the file has where an error is hidden otherwise, and says so', () => {
      const hidden = 'IF(ISNUMBER(_xldudf_TRIPDRIFT_EFFECTIVE(A1,200,160)),1,2)';
      const rows = `<row r="1"><c r="A1"><v>5</v></c>${stored(hidden, '2')}${unknown}</row>`;
      const copy = share(zipParts(withSheet(rows)));
      expect(cellsOf(copy.bytes)['C1']?.value).toBe(2);
      expect(copy.notes.join('\n')).toContain('cell C1: the result could not be worked out');
      expect(shared(stored(hidden, '1'))['C1']?.value).toBe(1);
      const guarded = 'IF(ISNUMBER(B1),_xldudf_TRIPDRIFT_EFFECTIVE(B1,200,160),-1)';
      expect(shared(stored(guarded, '-1') + unknown)['C1']?.value).toBe(-1);
    });
  });

  it('leaves out rules of newer programs that call a function of ours, and says so', () => {
    const x14 = 'xmlns:x14="http://schemas.microsoft.com/office/spreadsheetml/2009/9/main"';
    const xm = 'xmlns:xm="http://schemas.microsoft.com/office/excel/2006/main"';
    const ours = '_xldudf_TRIPDRIFT_EFFECTIVE(A2,200,160)';
    const rule = (kind: string, area: string, formula: string): string =>
      `<x14:dataValidation type="${kind}"><x14:formula1><xm:f>${formula}</xm:f></x14:formula1><xm:sqref>${area}</xm:sqref></x14:dataValidation>`;
    const tail = `<extLst><ext ${x14} uri="{78C0D931-6437-407d-A8EE-F0AAD7539E65}"><x14:conditionalFormattings><x14:conditionalFormatting ${xm}><x14:cfRule type="expression" priority="1" id="{00000000-0000-0000-0000-000000000001}"><xm:f>${ours}&gt;1</xm:f></x14:cfRule><xm:sqref>A2</xm:sqref></x14:conditionalFormatting></x14:conditionalFormattings></ext><ext ${x14} uri="{CCE6A557-97BC-4b89-ADB6-D9C93CAAB3DF}"><x14:dataValidations ${xm} count="2">${rule('decimal', 'A3', ours)}${rule('list', 'B3', '$A$1:$A$3')}</x14:dataValidations></ext></extLst>`;
    const { bytes, notes } = share(
      zipParts(withSheet(`<row r="1">${effective('A1')}</row>`, smallParts(), tail)),
    );
    expect(notes.join('\n')).toContain('a conditional format of A2 can hold no value and is left out');
    expect(notes.join('\n')).toContain('a rule for input in A3 can hold no value and is left out');
    const sheet = partText(bytes, 'xl/worksheets/sheet1.xml');
    expect(sheet).not.toContain('TRIPDRIFT');
    expect(sheet).toContain(`count="1">${rule('list', 'B3', '$A$1:$A$3')}<`);
    expect(objections(bytes)).toEqual([]);
  });

  it('gives tables of what-ifs their values, which would come out wrong', () => {
    const rows = `<row r="1">${effective('B1', 'A1,200,160')}</row><row r="2"><c r="A2"><v>4</v></c><c r="B2"><f t="dataTable" ref="B2:B3" dt2D="0" dtr="0" r1="A1"/><v>5</v></c></row><row r="3"><c r="A3"><v>8</v></c><c r="B3"><v>10</v></c></row>`;
    const { bytes, notes } = share(zipParts(withSheet(rows)));
    expect(partText(bytes, 'xl/worksheets/sheet1.xml')).not.toContain('dataTable');
    expect([cellsOf(bytes)['B2']?.value, cellsOf(bytes)['B3']?.value]).toEqual([5, 10]);
    expect(notes.join('\n')).toContain('the table of what-ifs in B2:B3 has its values');
    expect(objections(bytes)).toEqual([]);
  });

  it('of a strict workbook, and of one with prefixed elements, is accepted by the Open XML SDK', () => {
    const rows = `<row r="1">${effective('A1')}${effective('XFD1')}</row><row r="1048576">${effective('B1048576')}</row>`;
    const plain = withSheet(
      rows,
      smallParts(),
      '<pageMargins left="0.7" right="0.7" top="0.75" bottom="0.75" header="0.3" footer="0.3"/>',
    );
    const marked = prefixed(plain, [
      'xl/worksheets/sheet1.xml',
      'xl/workbook.xml',
      'xl/_rels/workbook.xml.rels',
    ]);
    for (const parts of [plain, withSheet(rows, strictParts()), marked]) {
      const { bytes } = share(zipParts(parts));
      expect(objections(bytes)).toEqual([]);
      expect(cellsOf(bytes)['XFD1']?.value).toBe(6.25);
      expect(partText(bytes, 'xl/comments1.xml')).toContain('ref="B1048576"');
    }
  });

  it('has no note that a formula’s text could break out of, and no formula made of one', () => {
    const rows = `<row r="1"><c r="A1" t="str"><f>TRIPDRIFT.ZONE(5,3600,"mil")&amp;"&lt;/t&gt;&lt;b&gt;=1+1_x000D_"</f><v>=1+1</v></c></row>`;
    const { bytes } = share(zipParts(withSheet(rows)));
    expect(cellsOf(bytes)['A1']).toEqual({ value: '=1+1', style: 0 });
    const comments = partText(bytes, 'xl/comments1.xml');
    expect(comments).toContain('&amp;&quot;&lt;/t&gt;&lt;b&gt;=1+1_x005F_x000D_&quot;');
    expect(objections(bytes)).toEqual([]);
  });

  it('works a chain of formulas out from its start', () => {
    const length = 3000;
    const rows = Array.from({ length }, (_, index) => {
      const row = index + 1;
      return `<row r="${row}">${effective(`A${row}`, `${row === 1 ? '5' : `A${row - 1}`},200,200`, '')}</row>`;
    });
    const { bytes } = share(zipParts(withSheet(rows.join(''))));
    expect(cellsOf(bytes)[`A${length}`]?.value).toBe(5);
  });

  it('follows chains of them in either direction, however long', () => {
    const rows = Array.from({ length: 3000 }, (_, index) => {
      const row = index + 1;
      return `<row r="${row}">${effective(`A${row}`, `${row === 3000 ? '5' : `A${row + 1}`},200,200`, '')}</row>`;
    });
    const { bytes, unknown } = share(zipParts(withSheet(rows.join(''))));
    expect([cellsOf(bytes)['A1']?.value, unknown]).toEqual([5, []]);
  });

  it('of many formulas of one cell each, as newer programs store them, takes seconds', () => {
    const rows = Array.from({ length: 5000 }, (_, index) => {
      const row = index + 1;
      return `<row r="${row}">${effective(`A${row}`, `B${row},200,160`, '<v>6.25</v>', ` t="array" ref="A${row}"`)}<c r="B${row}"><v>5</v></c></row>`;
    });
    const original = zipParts(withSheet(rows.join('')));
    for (const formulas of ['values', 'native'] as const) {
      const begun = performance.now();
      const { bytes, replaced } = share(original, formulas);
      expect(replaced[formulas]).toBe(5000);
      expect(cellsOf(bytes)['A5000']?.value).toBe(6.25);
      expect(performance.now() - begun).toBeLessThan(30_000);
    }
  });

  it('numbers days as the original does', () => {
    const rows = '<row r="1"><c r="A1"><f>TRIPDRIFT.EFFECTIVE(40000,200,200)</f><v>40000</v></c></row>';
    const parts = withSheet(rows, smallParts({ workbookHead: '<workbookPr date1904="1"/>' }));
    expect(cellsOf(share(zipParts(parts)).bytes)['A1']?.value).toBe(40_000);
    expect(partText(share(sharedBook({ date1904: true })).bytes, 'xl/workbook.xml')).toContain(
      'date1904="1"',
    );
  });
});
