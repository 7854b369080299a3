import { gridPort } from '../../src/hosts/grid/gridPort.ts';
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
