import type { SheetModel } from '../../../../sheets/model.ts';
import type { OpenWorkbook } from '../package/openWorkbook.ts';
import type { StyleNumbers } from '../styles/append.ts';
import { looksOf } from '../styles/looks.ts';
import { rowFormula } from '../../../formats/rowFormula.ts';
import { sheetFrame } from './frame.ts';
import { rowMarkup } from './rows.ts';

/** A sheet whose looks stand in the workbook, ready to be written out. */
export interface SheetBody {
  /** The part's text, piece by piece; `onRow` is told of each row, `onCut` of each text that had to be cut. */
  pieces(onRow: () => void, onCut: (address: string) => void): Iterable<string>;
}

/** Adds a sheet's looks to the workbook's and prepares its formulas; `given` leads from wanted sheet names to real ones. */
export function sheetBody(
  sheet: SheetModel,
  { dialect, from1904 }: OpenWorkbook,
  numbers: StyleNumbers,
  given: ReadonlyMap<string, string>,
): SheetBody {
  const frame = sheetFrame(sheet, dialect, (rule) => numbers.shade(rule.style));
  const looks = looksOf(sheet, numbers, from1904);
  const formulas = sheet.formulas.map((template) => rowFormula(template, given));
  return {
    *pieces(onRow, onCut) {
      yield frame.before;
      for (const row of rowMarkup({ sheet, looks, formulas, onCut })) {
        yield row;
        onRow();
      }
      yield frame.after;
    },
  };
}
