import { describe, expect, it } from 'vitest';
import { type GridPort, gridPort } from '../../src/hosts/grid/gridPort.ts';
import { gridWorkbook, sheetId } from '../../src/bench/open/gridWorkbook.ts';
import { viewWorkbook } from '../../src/hosts/file/view/viewWorkbook.ts';
import { linkOf } from '../../src/hosts/grid/links.ts';
import { onValuesOnly } from '../../src/hosts/grid/write/sheetData.ts';
import { zipParts } from '../fixtures/workbooks/package.ts';
import { smallParts } from '../fixtures/workbooks/small.ts';
import { sheetOf } from '../hosts/file/write/model.ts';
import { workbookPortContract } from '../hosts/port/contract.ts';
import { headlessGrid, storedWorkbook } from './headless.ts';

workbookPortContract('The grid', (workbook) => {
  const grid = headlessGrid();
  const book = grid.api.createWorkbook(storedWorkbook(workbook));
  return {
    port: gridPort(grid),
    select(name, { top, left, bottom, right }) {
      const sheet = book.getSheetByName(name)!;
      book.setActiveSheet(sheet);
      book.setActiveRange(sheet.getRange(top - 1, left - 1, bottom - top + 1, right - left + 1));
    },
    type({ sheet, row, column }, text) {
      book
        .getSheetByName(sheet)!
        .getRange(row - 1, column - 1)
        .setValue(text);
    },
  };
});

describe('a run of more than 1,000 rows', () => {
  const rows = Array.from({ length: 1_200 }, (_, index) => [
    `V-${index}`,
    index,
    { value: 2 * index, formula: 0 },
  ]);
  const models = [sheetOf('Large', rows, { formulas: ['2*B{r}'] }), sheetOf('Small', [['plain']])];
  const opened = () => {
    const grid = headlessGrid();
    const book = grid.api.createWorkbook(storedWorkbook({ name: 'Empty.xlsx', sheets: [] }));
    return { grid, book, port: gridPort(grid) };
  };
  const large = async (port: GridPort) =>
    (await port.readWorkbook()).sheets.find(({ name }) => name === 'Large')?.rows;
  const values = rows.map(([tag, number]) => [tag, number, 2 * Number(number)]);

  it('shows results without formulas, and comes and goes with Undo and Redo', async () => {
    const { book, port } = opened();
    await port.writeSheets(models);
    expect(await large(port)).toEqual(values);
    expect(book.getSheetByName('Large')!.getRange(5, 2).getFormula()).toBe('');
    book.undo();
    expect(await large(port)).toBeUndefined();
    book.redo();
    expect(await large(port)).toEqual(values);
  });

  it('is said of the sheets that have formulas, and of no other', async () => {
    const { grid, port } = opened();
    const said: string[] = [];
    const stop = onValuesOnly(grid, (sheet) => said.push(sheet));
    await port.writeSheets(models);
    expect(said).toEqual(['Large']);
    await port.writeSheets([sheetOf('Few', rows.slice(0, 3), { formulas: ['2*B{r}'] })]);
    expect(said).toEqual(['Large']);
    stop();
    await port.writeSheets(models);
    expect(said).toEqual(['Large']);
  });
});

describe('cells that lead elsewhere', () => {
  const list = sheetOf('List', [], {
    rowCount: 1,
    rows: () => [
      {
        cells: [{ value: 'V-1' }, { value: 'summary' }, { value: 'nowhere' }, undefined],
        links: [
          { column: 1, to: { sheet: 'Channels', row: 7, column: 'AB' } },
          { column: 2, to: { sheet: 'Summary', ours: true, row: 3, column: 'A' } },
          { column: 3, to: { sheet: 'Gone', row: 1, column: 'A' } },
          { column: 4, to: { sheet: 'Channels', row: 1, column: 'A' } },
        ],
      },
    ],
  });
  const channels = {
    name: 'Channels',
    rows: [['Tag']],
    hidden: false,
    hiddenRows: new Set<number>(),
    tables: [],
  };

  it('know the sheets of their own run by the names that these were given', async () => {
    const grid = headlessGrid();
    const book = grid.api.createWorkbook(storedWorkbook({ name: 'Book.xlsx', sheets: [channels] }));
    const port = gridPort(grid);
    for (const [name, summary] of [
      ['List', 'Summary'],
      ['List (2)', 'Summary (2)'],
    ] as const) {
      await port.writeSheets([list, sheetOf('Summary', [['plain']])]);
      const cells = book.getSheetByName(name)!.getSheet().getCellMatrix();
      expect([0, 1, 2, 3].map((column) => linkOf(cells.getValue(0, column)))).toEqual([
        { sheet: 'Channels', row: 7, column: 28 },
        { sheet: summary, row: 3, column: 1 },
        undefined,
        undefined,
      ]);
      const made = [...port.written.values()].find((model) => model.name === name)!;
      expect([...made.rows()][0]!.links![1]!.to.sheet).toBe(summary);
    }
  });

  it('lead there in a file that has them', () => {
    const sheet = `<worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><sheetData>
      <row r="1"><c r="A1"><v>1</v></c><c r="B1"><v>2</v></c><c r="C1"><v>3</v></c></row></sheetData>
      <hyperlinks><hyperlink ref="A1:B1" location="'Channels'!C4"/></hyperlinks></worksheet>`;
    const file = zipParts({ ...smallParts(), 'xl/worksheets/sheet1.xml': sheet });
    const { sheets } = gridWorkbook(viewWorkbook('links.xlsx', file));
    const cells = Object.values(sheets![sheetId(0)]!.cellData![0]!);
    const place = { sheet: 'Channels', row: 4, column: 3 };
    expect(cells.map(linkOf)).toEqual([place, place, undefined]);
  });
});
