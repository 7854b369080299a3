import { execFileSync } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, delimiter, extname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { describe, expect, it } from 'vitest';

/** Path of the LibreOffice command found on PATH, or undefined where it is not installed. */
export function soffice(): string | undefined {
  return (process.env['PATH'] ?? '')
    .split(delimiter)
    .flatMap((folder) => [join(folder, 'soffice'), join(folder, 'libreoffice')])
    .find((path) => existsSync(path));
}

/**
 * A block of tests that needs LibreOffice: skipped where it is absent, but failing there when the
 * environment variable CI is `true`, so that a build server cannot lose these checks unnoticed.
 */
export function describeWithLibreOffice(name: string, tests: () => void): void {
  const title = `${name} (needs LibreOffice)`;
  if (soffice() !== undefined) {
    describe(title, tests);
  } else if (process.env['CI'] === 'true') {
    describe(title, () => {
      it('finds soffice on PATH', () => {
        expect.fail('LibreOffice is not installed');
      });
    });
  } else {
    describe.skip(title, tests);
  }
}

/**
 * Converts a file and returns the path of the result in `outDir`. `filter` is what `--convert-to` takes:
 * `xlsx`, `csv`, `pdf`, `xlsx:Calc MS Excel 2007 XML` … `inputFilter` is what `--infilter` takes, as in
 * `Text - txt - csv (StarCalc):44,34,76` for a table in UTF-8. Runs in a profile of its own, so calls may overlap.
 */
export function convert(inputPath: string, filter: string, outDir: string, inputFilter?: string): string {
  const command = soffice();
  if (command === undefined) throw new Error('LibreOffice is not installed');
  const profile = mkdtempSync(join(tmpdir(), 'lo-profile-'));
  let said: string;
  try {
    said = execFileSync(
      command,
      [
        '--headless',
        '--norestore',
        `-env:UserInstallation=${pathToFileURL(profile).href}`,
        ...(inputFilter === undefined ? [] : [`--infilter=${inputFilter}`]),
        '--convert-to',
        filter,
        '--outdir',
        outDir,
        inputPath,
      ],
      { encoding: 'utf8', stdio: 'pipe', timeout: 120_000 },
    );
  } finally {
    rmSync(profile, { recursive: true, force: true });
  }
  const extension = filter.split(':')[0] ?? filter;
  const output = join(outDir, `${basename(inputPath, extname(inputPath))}.${extension}`);
  if (!existsSync(output)) throw new Error(`LibreOffice did not write ${output}: ${said}`);
  return output;
}
