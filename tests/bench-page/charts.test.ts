import { expect, it } from 'vitest';
import { addSheets } from '../../src/hosts/file/write/addSheets.ts';
import { gridPort } from '../../src/hosts/grid/gridPort.ts';
import { zipParts } from '../fixtures/workbooks/package.ts';
import { smallParts } from '../fixtures/workbooks/small.ts';
import { chartedSheets } from '../hosts/file/write/chartedModel.ts';
import { partText } from '../hosts/file/write/parts.ts';
import { headlessGrid, storedWorkbook } from './headless.ts';

it('charts pass through the grid and lead to the sheets under the names they got there', async () => {
  const grid = headlessGrid();
  const taken = { name: "Pump's thresholds", hidden: false, rows: [['x']], hiddenRows: new Set<number>() };
  grid.api.createWorkbook(storedWorkbook({ name: 'Book.xlsx', sheets: [{ ...taken, tables: [] }] }));
  const port = gridPort(grid);
  await port.writeSheets(chartedSheets());
  const original = zipParts(smallParts({ sheetNames: [taken.name] }));
  const copy = addSheets(original, [...port.written.values()]).bytes;
  expect(partText(copy, 'xl/charts/chart1.xml')).toContain("<c:f>'Record'!$A$2:$A$7</c:f>");
  expect(partText(copy, 'xl/charts/chart3.xml')).toContain(
    "<c:f>'Pump''s thresholds (2)'!$A$2:$A$5</c:f><c:strCache>",
  );
});
