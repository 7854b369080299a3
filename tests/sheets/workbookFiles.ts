import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import type { Cell } from '../../src/cells/cell.ts';
import type { Workbook } from '../../src/cells/sheet.ts';
import { readWorkbook } from '../../src/hosts/file/read/workbook.ts';
import { newWorkbook } from '../../src/hosts/file/write/newWorkbook.ts';
import type { SheetModel } from '../../src/sheets/model.ts';
import { convert } from '../libreoffice.ts';

/** Has another program calculate a workbook and save it into a folder; the path of what it saved. */
type Calculator = (path: string, folder: string) => string;

const libreOffice: Calculator = (path, folder) => convert(path, 'xlsx', folder);

/**
 * The sheets as another program calculates them, LibreOffice where none is named: the results stored beside formulas are
 * taken out of the file first, so that whatever comes back was worked out there.
 */
export function recalculated(
  models: readonly SheetModel[],
  folder: string,
  calculator: Calculator = libreOffice,
): Workbook {
  const out = mkdtempSync(join(folder, 'out-'));
  const path = join(out, 'sheets.xlsx');
  writeFileSync(path, withoutResults(newWorkbook(models.map(withoutPercentages))));
  const back = mkdtempSync(join(folder, 'back-'));
  return readWorkbook('sheets.xlsx', readFileSync(calculator(path, back)));
}

/** A workbook without the results that are stored beside formulas. */
export function withoutResults(bytes: Uint8Array): Uint8Array {
  const parts = unzipSync(bytes);
  for (const [name, part] of Object.entries(parts)) {
    if (!/worksheets\/[^/]*\.xml$/i.test(name)) continue;
    const stripped = strFromU8(part).replace(
      /<c r="([A-Z]+\d+)"((?: s="\d+")?)(?: t="(?:str|b)")?>(<f[^>]*\/>|<f[^>]*>[^<]*<\/f>)<v>[^<]*<\/v>/g,
      '<c r="$1"$2>$3',
    );
    if (/<\/f><v>|<f[^>]*\/><v>/.test(stripped)) throw new Error(`a stored result is left in ${name}`);
    parts[name] = strToU8(stripped);
  }
  return zipSync(parts);
}

/** The sheet with percentages shown as fractions, because cells shown in percent are read back to twelve digits only. */
function withoutPercentages(model: SheetModel): SheetModel {
  const styles = Object.entries(model.styles).map(([name, style]) => {
    const { numberFormat, ...rest } = style;
    return [name, numberFormat?.includes('%') ? rest : style] as const;
  });
  return { ...model, styles: Object.fromEntries(styles) };
}

/** A cell's value as a model has it; an empty text is nothing. */
export function plain(cell: Cell | undefined): number | string | boolean | null {
  if (cell === undefined || cell === null || cell === '') return null;
  if (typeof cell === 'object') throw new Error(`unexpected cell ${JSON.stringify(cell)}`);
  return cell;
}
