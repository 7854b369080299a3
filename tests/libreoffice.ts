import { execFileSync } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, extname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { describeWithTool, programOf } from './tool.ts';

/** The LibreOffice command, or undefined where there is none that runs. */
export function soffice(): string | undefined {
  return programOf('LibreOffice');
}

/** A block of tests that needs LibreOffice. */
export function describeWithLibreOffice(name: string, tests: () => void): void {
  describeWithTool('LibreOffice', name, tests);
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
