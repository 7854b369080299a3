import type { FileFormulas } from '../../../evidence/formulas.ts';
import { viewWorkbook } from '../../../hosts/file/view/viewWorkbook.ts';
import { openWorkbook } from '../../../hosts/file/write/package/openWorkbook.ts';
import { attribute, child } from '../../../hosts/file/write/xml/outline.ts';
import { formulaTokens } from '../../../hosts/formats/formulaTokens.ts';
import { rowFormula } from '../../../hosts/formats/rowFormula.ts';

/** The formulas of a workbook's file. @throws FileRefused where it can't be read. */
export function fileFormulas(name: string, original: Uint8Array): FileFormulas {
  const sheets = new Map(
    viewWorkbook(name, original).sheets.map((sheet) => [
      sheet.name,
      new Map(
        sheet.rows.flatMap(({ row, cells }) =>
          cells.flatMap(({ column, formula }) =>
            formula === undefined ? [] : [[`${row} ${column}`, formula] as const],
          ),
        ),
      ),
    ]),
  );
  const { root } = openWorkbook(original, false).workbook;
  const settings = child(root, 'calcPr');
  const asked = settings && attribute(settings, 'fullCalcOnLoad');
  return {
    calculatedOnOpening: asked === '1' || asked === 'true',
    at: (sheet, row, column) => sheets.get(sheet)?.get(`${row} ${column}`),
    written: (template, row, names) => rowFormula(template, names).at(row),
    same: (one, other) => one === other || spelledAlike(one) === spelledAlike(other),
  };
}

/**
 * A formula without what programs spell in their own way: white space, case, numbers such as 1E-12, `TRUE()` for `TRUE`,
 * and quotes around names of sheets.
 */
function spelledAlike(formula: string): string {
  const parts = formulaTokens(formula)
    .filter(({ kind, text }) => kind === 'text' || text.trim() !== '')
    .map(({ kind, text }) => {
      if (kind === 'text') return text;
      if (kind === 'number') return String(Number(text));
      return (kind === 'sheet' ? text.slice(1, -1).replaceAll("''", "'") : text).toUpperCase();
    });
  return parts
    .filter((part, index) => {
      const [two, one, next] = [parts[index - 2] ?? '', parts[index - 1] ?? '', parts[index + 1] ?? ''];
      const opens = part === '(' && next === ')' && isTruth(one);
      const closes = part === ')' && one === '(' && isTruth(two);
      return !opens && !closes;
    })
    .join(' ');
}

function isTruth(word: string): boolean {
  return word === 'TRUE' || word === 'FALSE';
}
