import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { objections } from '../hosts/file/write/validator.ts';
import { demo, runAudit, temporaryFolder } from './run.ts';

const folder = temporaryFolder();

/** The demo with another style sheet. */
function restyled(change: (styles: string) => string): Uint8Array {
  const parts = unzipSync(readFileSync(demo));
  const styles = strFromU8(parts['xl/styles.xml'] ?? new Uint8Array());
  return zipSync({ ...parts, 'xl/styles.xml': strToU8(change(styles)) });
}

const alternatives =
  '<mc:AlternateContent xmlns:mc="http://schemas.openxmlformats.org/markup-compatibility/2006"><mc:Choice Requires="own" xmlns:own="urn:office-suite:8">$&</mc:Choice><mc:Fallback>$&</mc:Fallback></mc:AlternateContent>';
const own =
  '<numFmt numFmtId="1" formatCode="0%"/><numFmt numFmtId="2" formatCode="0.00%"/><numFmt numFmtId="10" formatCode="0.0"/><numFmt numFmtId="49" formatCode="0%"/>';

describe('a workbook of another program', () => {
  it.each<[string, (styles: string) => string]>([
    [
      'gives built-in formats codes of its own',
      (styles) =>
        styles.includes('<numFmts')
          ? styles.replace(/(<numFmts[^>]*>)/, `$1${own}`).replace(/<numFmts count="\d+"/, '<numFmts')
          : styles.replace('<fonts', `<numFmts>${own}</numFmts><fonts`),
    ],
    [
      'has alternatives among its cell formats',
      (styles) =>
        styles
          .replace(/(?<=<cellXfs[^>]*>.*)<xf [^>]*\/>/, alternatives)
          .replace(/<font>.*?<\/font>/, alternatives),
    ],
  ])('a fresh copy of a workbook that %s is what its audit wrote', (_, change) => {
    const bytes = restyled(change);
    writeFileSync(join(folder, 'in.xlsx'), bytes);
    const written = runAudit(folder, 'in.xlsx', '--out', 'out.xlsx', '--force');
    expect(written.code).toBe(0);
    const verified = runAudit(folder, '--verify', 'out.xlsx');
    expect(verified.code, verified.out + verified.err).toBe(0);
    expect(objections(readFileSync(join(folder, 'out.xlsx')))).toEqual(objections(bytes));
  });

  it.each([
    ['station.xltx', 'spreadsheetml.template.main', 'out1.xlsx', 'out1.xltx', '.xlsx'],
    ['station.xltm', 'spreadsheetml.template.macroEnabled.main', 'out2.xlsm', 'out2.xlsx', '.xlsm'],
    ['named-wrong.xlsx', 'spreadsheetml.sheet.macroEnabled.main', 'out3.xlsm', 'out3.xlsx', '.xlsm'],
  ])('%s is copied to a workbook of the ending that fits what it holds', (name, type, out, other, ending) => {
    const parts = unzipSync(readFileSync(demo));
    const types = strFromU8(parts['[Content_Types].xml'] ?? new Uint8Array());
    const own = type.includes('macroEnabled')
      ? `application/vnd.ms-excel.${type.replace('spreadsheetml.', '')}+xml`
      : `application/vnd.openxmlformats-officedocument.${type}+xml`;
    const changed = types.replace(
      'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml',
      own,
    );
    writeFileSync(join(folder, name), zipSync({ ...parts, '[Content_Types].xml': strToU8(changed) }));
    const refused = runAudit(folder, name, '--out', other);
    expect(refused.code).toBe(2);
    expect(refused.err).toContain(`a copy of ${name} must be named ${ending}`);
    expect(runAudit(folder, name, '--out', out).code).toBe(0);
    expect(objections(readFileSync(join(folder, out)), ending.slice(1))).toEqual([]);
  });
});
