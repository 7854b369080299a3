import { gatheringLinks } from '../../../../sheets/links.ts';
import type { LinkTarget, SheetModel } from '../../../../sheets/model.ts';
import type { OpenWorkbook } from '../package/openWorkbook.ts';
import type { StyleNumbers } from '../styles/append.ts';
import { stylesByName } from '../styles/stylesByName.ts';
import { rowFormula } from '../../../formats/rowFormula.ts';
import { sheetFrame } from './frame.ts';
import { hyperlinks } from './hyperlinks.ts';
import { writeRows } from './rows.ts';
import type { ByteStream } from './stream.ts';

/** A sheet whose looks stand in the workbook, ready to be written out. */
export interface SheetBody {
  /** Writes the part's text; `onRow` is told of each row, `onCut` of each text that had to be cut. */
  write(out: ByteStream, onRow: () => void, onCut: (address: string) => void): void;
}

/** Where a sheet stands in its workbook. */
export interface SheetSurroundings {
  /** From the names that sheets of the run asked for to those they get. */
  readonly given: ReadonlyMap<string, string>;
  /** Name of the sheet to which a link leads; `undefined` where there is none. */
  readonly nameOf: (target: LinkTarget) => string | undefined;
  /** Whether the workbook opens on it. */
  readonly isFront: boolean;
}

/** Adds a sheet's looks to the workbook's and prepares its formulas. */
export function sheetBody(
  sheet: SheetModel,
  { dialect, from1904 }: OpenWorkbook,
  numbers: StyleNumbers,
  { given, nameOf, isFront }: SheetSurroundings,
): SheetBody {
  const frame = sheetFrame(sheet, dialect, isFront, (rule) => numbers.shade(rule.style));
  const styles = stylesByName(sheet, numbers, from1904);
  const formulas = sheet.formulas.map((template) => rowFormula(template, given));
  const { sheet: gathering, links } = gatheringLinks(sheet);
  return {
    write(out, onRow, onCut) {
      out.text(frame.before);
      writeRows(out, { sheet: gathering, styles, formulas, onCut }, onRow);
      out.text(frame.after(hyperlinks(links, nameOf)));
    },
  };
}
