import { describe, expect, it } from 'vitest';
import { audit } from '../../../src/audit/audit.ts';
import type { LinkTarget, SheetModel } from '../../../src/sheets/model.ts';
import { resultSheets } from '../../../src/sheets/resultSheets.ts';
import { FakeBook } from '../../office/fake/book.ts';
import { plant } from '../../sheets/plant.ts';
import { workbookOf } from '../../sheets/tables.ts';
import { sheetOf } from '../file/write/model.ts';
import { openInExcel } from './open.ts';

const area = { top: 1, left: 1, bottom: 3, right: 2 };

function list(name: string, to: LinkTarget, rest: Partial<SheetModel> = {}): SheetModel {
  const rows = [
    { cells: [{ value: 'Tag' }, { value: 'Row' }] },
    ...[2, 3].map((row) => ({
      cells: [{ value: `=P-${row}`, style: 'strong' }, { value: row }],
      links: [{ column: 1, to }],
    })),
  ];
  return sheetOf(name, [], {
    styles: { strong: { bold: true, linked: true } },
    rowCount: rows.length,
    rows: () => rows,
    table: { name: 'TripdriftResults', area },
    ...rest,
  });
}

function station(): FakeBook {
  const book = new FakeBook();
  book.add("Crew's list", [['Tag'], ['31-VT-1X']]);
  return book;
}

const source: LinkTarget = { sheet: "Crew's list", row: 2, column: 'A' };

describe('result sheets in Excel', () => {
  it('have tables under names that neither a table nor a defined name has', async () => {
    const book = station();
    book.names.push('tripdriftresults');
    book.sheets[0]!.tables.push({ name: 'TripdriftResults2', area, showHeaders: true, showTotals: false });
    const { port } = openInExcel(book);
    await port.writeSheets([list('Audit results', source), list('Audit problems', source)]);
    const tables = ['Audit results', 'Audit problems'].flatMap((name) => book.find(name)!.tables);
    expect(tables).toMatchObject([
      { name: 'TripdriftResults3', area, style: 'TableStyleLight1' },
      { name: 'TripdriftResults4', area },
    ]);
  });

  it('lead to cells of the workbook and of each other, with the text and the look of the cell', async () => {
    const book = station();
    book.add('Audit results', [['of another time']]);
    const { port } = openInExcel(book);
    await port.writeSheets([
      list('Audit results', source),
      list('Audit problems', { sheet: 'Audit results', ours: true, row: 3, column: 'B' }),
      list('Audit groups', { ...source, sheet: 'Gone' }),
    ]);
    const sheet = book.find('Audit results (2)')!;
    expect(Object.fromEntries(sheet.links)).toEqual({ A2: "'Crew''s list'!A2", A3: "'Crew''s list'!A2" });
    expect(sheet.content(2, 1)).toBe('=P-2');
    expect(sheet.painted(2, 1, 'Font.Bold')).toBe(true);
    expect(book.find('Audit problems')!.links.get('A2')).toBe("'Audit results (2)'!B3");
    expect(book.find('Audit groups')!.links.size).toBe(0);
  });

  it('open on the one in front', async () => {
    const book = station();
    const { port } = openInExcel(book);
    await port.writeSheets([
      list('One', source),
      list('Two', source, { inFront: true }),
      list('Three', source),
    ]);
    expect(book.active?.name).toBe('Two');
  });

  it('of a whole audit stand with all their tables, the summary in front', async () => {
    const book = station();
    const { port } = openInExcel(book);
    await port.writeSheets(resultSheets(audit(workbookOf(plant))));
    expect(book.active?.name).toBe('Audit summary');
    const tables = book.sheets.flatMap((sheet) => sheet.tables.map(({ name }) => name));
    expect(tables).toEqual(
      expect.arrayContaining(['TripdriftResults', 'TripdriftGroups', 'TripdriftProblems']),
    );
  });
});
