import { closeSync, openSync, readFileSync, writeFileSync } from 'node:fs';
import { audit } from '../../src/audit/audit.ts';
import type { Report } from '../../src/audit/model/report.ts';
import type { Sheet } from '../../src/cells/sheet.ts';
import { readWorkbook } from '../../src/hosts/file/read/workbook.ts';
import { addSheetsTo } from '../../src/hosts/file/write/addSheets.ts';
import { newWorkbook } from '../../src/hosts/file/write/newWorkbook.ts';
import { nodeDeflater } from '../../src/hosts/file/zip/nodeDeflater.ts';
import type { SheetModel } from '../../src/sheets/model.ts';
import { resultSheets } from '../../src/sheets/resultSheets.ts';

/** One measured run in a process of its own: `run.ts whole|plain IN OUT`; prints its phases and peak memory as JSON. */
const [mode = '', input = '', output = ''] = process.argv.slice(2);

const phases: Record<string, number> = {};
function timed<T>(name: string, work: () => T): T {
  const start = performance.now();
  const result = work();
  phases[name] = (performance.now() - start) / 1000;
  return result;
}

function asModel(sheet: Sheet): SheetModel {
  return {
    name: sheet.name,
    widths: [],
    styles: {},
    formulas: [],
    rowCount: sheet.rows.length,
    *rows() {
      for (const row of sheet.rows) {
        yield {
          cells: row.map((cell) => (cell === null || typeof cell === 'object' ? undefined : { value: cell })),
        };
      }
    },
    print: { landscape: true },
  };
}

const bytes = readFileSync(input);

function readAndAudit(): Report {
  const workbook = timed('read', () => readWorkbook('bench.xlsx', bytes));
  return timed('audit', () => audit(workbook));
}

if (mode === 'whole') {
  const report = readAndAudit();
  timed('write', () => {
    const file = openSync(output, 'w');
    addSheetsTo(
      bytes,
      resultSheets(report),
      (piece) => {
        writeFileSync(file, piece);
      },
      {
        deflater: nodeDeflater,
      },
    );
    closeSync(file);
  });
} else {
  const workbook = timed('read', () => readWorkbook('bench.xlsx', bytes));
  const written = timed('write', () => newWorkbook(workbook.sheets.map(asModel), { deflater: nodeDeflater }));
  writeFileSync(output, written);
}
phases['peakMB'] = process.resourceUsage().maxRSS / 1024;
process.stdout.write(JSON.stringify(phases));
