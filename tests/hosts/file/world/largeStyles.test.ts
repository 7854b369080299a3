import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';
import { bookParts, zip } from '../read/book.ts';

const times = (count: number, markup: (index: number) => string): string =>
  Array.from({ length: count }, (_, index) => markup(index)).join('');

/** A workbook of 0.2 MB with 7 MB of styles, as years of copying sheets leave them. */
function overgrown(): Uint8Array {
  const count = 12_000;
  const format = (index: number): string =>
    `<xf numFmtId="${index === 11_995 ? 9 : 0}" fontId="${index}" fillId="0" borderId="0" xfId="0" applyNumberFormat="0" applyBorder="0" applyAlignment="0" applyProtection="0"><alignment vertical="center" horizontal="left"/><protection locked="0"/></xf>`;
  const styles = [
    `<fonts>${times(count, (index) => `<font><b/><sz val="${8 + (index % 30)}"/><color theme="${index % 10}"/><name val="Calibri ${index % 7}"/><family val="2"/><scheme val="minor"/></font>`)}</fonts>`,
    '<fills count="1"><fill/></fills><borders count="1"><border/></borders>',
    `<cellStyleXfs>${times(count, format)}</cellStyleXfs><cellXfs>${times(count, format)}</cellXfs>`,
    `<cellStyles>${times(count, (index) => `<cellStyle name="Normal of sheet number ${index}" xfId="${index}" customBuiltin="1"/>`)}</cellStyles>`,
  ].join('');
  const data =
    '<row r="1"><c r="A1" s="11995"><v>0.03</v></c><c r="B1"><f>TRIPDRIFT.EFFECTIVE(5,200,160)</f><v>6.25</v></c></row>';
  return zip(bookParts({ sheets: [{ name: 'S', data }], styles }));
}

it('a workbook with overgrown styles is shared, restyled and added to in little memory', () => {
  const folder = mkdtempSync(join(tmpdir(), 'styles-'));
  try {
    const bytes = overgrown();
    expect(bytes.length).toBeLessThan(2 ** 18);
    const file = join(folder, 'book.xlsx');
    writeFileSync(file, bytes);
    const script = fileURLToPath(new URL('copyOvergrown.ts', import.meta.url));
    // Twenty times the styles, with the programs themselves in it; where more is needed, Node ends the process.
    const out = execFileSync(
      process.execPath,
      ['--max-old-space-size=140', '--import', 'tsx', script, file],
      {
        encoding: 'utf8',
      },
    );
    expect(JSON.parse(out)).toEqual({ shared: 6.25, sheets: 2, restyled: { percent: 3 } });
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}, 120_000);
