import { execFileSync } from 'node:child_process';
import { basename, extname, join } from 'node:path';
import { programOf } from './tool.ts';

/** Has Gnumeric calculate every formula of a workbook anew; returns the path of the result in `outDir`. */
export function recalculate(inputPath: string, outDir: string): string {
  const command = programOf('Gnumeric');
  if (command === undefined) throw new Error('Gnumeric is not installed');
  const output = join(outDir, `${basename(inputPath, extname(inputPath))}.xlsx`);
  execFileSync(command, ['--recalc', inputPath, output], { stdio: 'pipe', timeout: 120_000 });
  return output;
}
