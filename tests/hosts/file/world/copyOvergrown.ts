import { readFileSync } from 'node:fs';
import { patchWorkbook } from '../../../../src/hosts/file/patch/patchWorkbook.ts';
import { readWorkbook } from '../../../../src/hosts/file/read/workbook.ts';
import { collect } from '../../../../src/hosts/file/zip/collect.ts';
import { shareWorkbook } from '../../../../src/share/shareWorkbook.ts';
import { resultSheet } from '../write/model.ts';

/** Makes each kind of copy of the workbook that the command line names, and says what stands in them. */
const original = readFileSync(process.argv[2] ?? '');
const row = (bytes: Uint8Array) => readWorkbook('a.xlsx', bytes).sheets[0]?.rows[0];
const shared = shareWorkbook(original, { formulas: 'values', date: '2026-03-01' }).bytes;
const { sink, bytes } = collect();
const looks = [{ row: 1, column: 1, change: { bold: false } }];
patchWorkbook(original, [{ sheet: 'S', cells: [], looks }], [resultSheet()], sink);
process.stdout.write(
  JSON.stringify({
    shared: row(shared)?.[1],
    sheets: readWorkbook('a.xlsx', bytes()).sheets.length,
    restyled: row(bytes())?.[0],
  }),
);
