import { describe, expect, it } from 'vitest';
import { type GridPort, gridPort } from '../../src/hosts/grid/gridPort.ts';
import { onValuesOnly } from '../../src/hosts/grid/write/sheetData.ts';
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
