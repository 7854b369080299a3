import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { bundled } from '../../src/tools/package/oneFile.mjs';
import { newWorkbook } from '../../src/hosts/file/write/newWorkbook.ts';
import { nodeDeflater } from '../../src/hosts/file/zip/nodeDeflater.ts';
import { soffice } from '../libreoffice.ts';
import { stationSheets } from './station.ts';

/**
 * Speed and memory of the whole audit on generated workbooks, beside the same file merely read and written, and beside
 * LibreOffice loading, recalculating and saving the results. `npm run bench -- 1000 20000` for other sizes.
 */
const given = process.argv
  .slice(2)
  .map(Number)
  .filter((size) => size > 0);
const sizes = given.length > 0 ? given : [1_000, 20_000, 100_000];
const largestForLibreOffice = 20_000;
const folder = mkdtempSync(join(tmpdir(), 'tripdrift-bench-'));

/** What is measured, as one module: with a loader its own work would be measured too. */
const measured = join(folder, 'run.mjs');
writeFileSync(measured, (await bundled('tests/bench/run.ts')).text);

type Phases = Record<string, number>;

function run(mode: string, input: string, output: string): Phases {
  const done = spawnSync(process.execPath, [measured, mode, input, output], {
    encoding: 'utf8',
    maxBuffer: 1 << 26,
  });
  if (done.status !== 0) throw new Error(done.stderr);
  return JSON.parse(done.stdout) as Phases;
}

function libreOffice(program: string, input: string): number {
  const start = performance.now();
  const profile = `-env:UserInstallation=file://${join(folder, 'profile')}`;
  const done = spawnSync(program, [
    '--headless',
    '--norestore',
    profile,
    '--convert-to',
    'xlsx',
    '--outdir',
    join(folder, 'lo'),
    input,
  ]);
  if (done.status !== 0) throw new Error('LibreOffice did not convert the results');
  return (performance.now() - start) / 1000;
}

function seconds(value: number | undefined): string {
  return value === undefined ? '–' : value.toFixed(2);
}

try {
  const rows: Record<string, string | number>[] = [];
  const program = soffice();
  for (const size of sizes) {
    const input = join(folder, `station-${size}.xlsx`);
    const output = join(folder, `results-${size}.xlsx`);
    writeFileSync(input, newWorkbook(stationSheets(size), { deflater: nodeDeflater }));
    const whole = run('whole', input, output);
    const plain = run('plain', input, join(folder, `plain-${size}.xlsx`));
    const { read = 0, audit = 0, write = 0, peakMB = 0 } = whole;
    const total = read + audit + write;
    rows.push({
      channels: size,
      'read s': seconds(read),
      'audit s': seconds(audit),
      'write s': seconds(write),
      'whole s': seconds(total),
      'audit %': ((100 * audit) / total).toFixed(0),
      'channels/s': Math.round(size / total),
      'peak MB': Math.round(peakMB),
      'merely read+written s': seconds((plain['read'] ?? 0) + (plain['write'] ?? 0)),
      'its peak MB': Math.round(plain['peakMB'] ?? 0),
      'results MB': (statSync(output).size / 1e6).toFixed(1),
      'LibreOffice s': program && size <= largestForLibreOffice ? seconds(libreOffice(program, output)) : '–',
    });
  }
  console.table(rows);
} finally {
  rmSync(folder, { recursive: true, force: true });
}
