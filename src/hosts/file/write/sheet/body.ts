import { gatheringLinks } from '../../../../sheets/links.ts';
import type { LinkTarget, SheetModel } from '../../../../sheets/model.ts';
import type { OpenWorkbook } from '../package/openWorkbook.ts';
import type { StyleNumbers } from '../styles/append.ts';
import { looksOf } from '../styles/looks.ts';
import { rowFormula } from '../../../formats/rowFormula.ts';
import { sheetFrame } from './frame.ts';
import { hyperlinks } from './hyperlinks.ts';
import { rowMarkup } from './rows.ts';

/** A sheet whose looks stand in the workbook, ready to be written out. */
export interface SheetBody {
  /** The part's text, piece by piece; `onRow` is told of each row, `onCut` of each text that had to be cut. */
  pieces(onRow: () => void, onCut: (address: string) => void): Iterable<string>;
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
  const looks = looksOf(sheet, numbers, from1904);
  const formulas = sheet.formulas.map((template) => rowFormula(template, given));
  const { sheet: gathering, links } = gatheringLinks(sheet);
  return {
    *pieces(onRow, onCut) {
      yield frame.before;
      for (const row of rowMarkup({ sheet: gathering, looks, formulas, onCut })) {
        yield row;
        onRow();
      }
      yield frame.after(hyperlinks(links, nameOf));
    },
  };
}
