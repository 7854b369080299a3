import type { SheetModel } from '../../../../sheets/model.ts';
import type { OpenWorkbook } from '../package/openWorkbook.ts';
import type { StyleNumbers } from '../styles/append.ts';
import { looksOf } from '../styles/looks.ts';
import { rowFormula } from '../../../formats/rowFormula.ts';
import { sheetFrame } from './frame.ts';
import { writeRows } from './rows.ts';
import type { ByteStream } from './stream.ts';

/** A sheet whose looks stand in the workbook, ready to be written out. */
export interface SheetBody {
  /** Writes the part's text; `onRow` is told of each row, `onCut` of each text that had to be cut. */
  write(out: ByteStream, onRow: () => void, onCut: (address: string) => void): void;
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
    write(out, onRow, onCut) {
      out.text(frame.before);
      writeRows(out, { sheet, looks, formulas, onCut }, onRow);
      out.text(frame.after);
    },
  };
}
