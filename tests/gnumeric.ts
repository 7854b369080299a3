import { execFileSync, spawnSync } from 'node:child_process';
import { basename, extname, join } from 'node:path';
import { describe, expect, it } from 'vitest';

const command = 'ssconvert';

/**
 * A block of tests that needs Gnumeric's converter: skipped where it is absent, but failing there when the environment
 * variable CI is `true`.
 */
export function describeWithGnumeric(name: string, tests: () => void): void {
  const title = `${name} (needs ${command})`;
  if (spawnSync(command, ['--version'], { stdio: 'ignore' }).status === 0) describe(title, tests);
  else if (process.env['CI'] === 'true') {
    describe(title, () => {
      it(`finds ${command} on PATH`, () => {
        expect.fail('Gnumeric is not installed');
      });
    });
  } else describe.skip(title, tests);
}

/** Calculates every formula of a workbook anew and returns the path of the result in `outDir`. */
export function recalculate(inputPath: string, outDir: string): string {
  const output = join(outDir, `${basename(inputPath, extname(inputPath))}.xlsx`);
  execFileSync(command, ['--recalc', inputPath, output], { stdio: 'pipe', timeout: 120_000 });
  return output;
}
