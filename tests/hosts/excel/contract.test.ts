import { reference } from '../../../src/hosts/formats/reference.ts';
import { workbookPortContract } from '../port/contract.ts';
import { fakeBookOf, openInExcel } from './open.ts';

workbookPortContract('Excel', (workbook) => {
  const book = fakeBookOf(workbook);
  const { excel, port } = openInExcel(book);
  return {
    port,
    select(name, area) {
      excel.select(name, area);
    },
    type({ sheet, row, column }, text) {
      excel.change(sheet, reference({ top: row, left: column, bottom: row, right: column }), text);
    },
  };
});
