import type { SheetModel } from '../../../sheets/model.ts';
import { readTables } from '../read/tables.ts';
import { readWorkbookPart } from '../read/workbookPart.ts';
import { writeCopy, type WriteOptions, type WrittenSheets } from '../write/addSheets.ts';
import { openWorkbook, type OpenWorkbook } from '../write/package/openWorkbook.ts';
import { decodeXml, encodeXml } from '../write/xml/encoding.ts';
import type { ZipEntry } from '../zip/archive.ts';
import { defaultLimits } from '../zip/limits.ts';
import { FileRefused, oneLine } from '../zip/refused.ts';
import { grouped } from './groups.ts';
import { restyle, newStyles } from './restyle.ts';
import { patchSheet } from './patchSheet.ts';
import type { SheetEdits } from './types.ts';

/**
 * A copy of an .xlsx or .xlsm workbook in which edited cells say something else or look different, with new sheets behind
 * its own, handed to `sink` piece by piece. In the parts of edited sheets only those cells, and widths, heights and merged
 * areas that changed, are rewritten, and cells that shared a formula with one of them; new looks are added to the styles; all that a grid cannot show (charts, macros, comments, rules for input) is taken over byte for byte.
 * Where a formula comes or goes, the list of formula cells is left out: programs make it anew.
 *
 * Formulas come as people type them, with the result to be stored beside them; nothing is calculated here. Throws
 * FileRefused, naming sheet and cell, for an edit that would damage the file, and an Error for a cell off the sheet.
 */
export function patchWorkbook(
  original: Uint8Array,
  edits: readonly SheetEdits[],
  newSheets: readonly SheetModel[],
  sink: (piece: Uint8Array) => void,
  options: WriteOptions = {},
): WrittenSheets {
  const workbook = openWorkbook(original, newSheets.length > 0);
  const { archive, dialect } = workbook;
  const changesStyles = edits.some(({ looks = [] }) => looks.length > 0);
  const styles =
    changesStyles && workbook.styles ? restyle(workbook.styles.text, workbook.styles.entry.name) : undefined;
  const newStyle = newStyles(styles);
  const { sheets } = readWorkbookPart(archive, defaultLimits);
  const rewritten = new Map<ZipEntry, Uint8Array>();
  let formulasChanged = false;
  for (const edit of togetherBySheet(edits)) {
    const part = sheets.find(({ name }) => name === edit.sheet)?.part;
    if (part === undefined) {
      throw new FileRefused(
        `The workbook has no sheet “${oneLine(edit.sheet)}” with cells; its changes cannot be saved there.`,
      );
    }
    const xml = decodeXml(archive.bytes(part), part.name);
    const tables = readTables(archive, part, defaultLimits);
    const source = { text: xml.text, part: part.name, main: dialect.main, tables, newStyle };
    const patched = patchSheet(source, edit);
    if (patched.text !== xml.text) rewritten.set(part, encodeXml({ ...xml, text: patched.text }));
    formulasChanged ||= patched.formulasChanged;
  }
  const styled = styles === undefined ? workbook : restyled(workbook, styles.text(), rewritten);
  const changes = { rewritten, withoutCalcChain: formulasChanged };
  const { notes, sheetNames } = writeCopy(styled, newSheets, changes, sink, options);
  return { sheetNames, notes: changesStyles && styles === undefined ? [...notes, plainNote] : notes };
}

const plainNote =
  'The file has no styles of cells, so bold, colours and the like that were changed here are not in the copy.';

/** The workbook with another style sheet, to which new sheets may still add. */
function restyled(workbook: OpenWorkbook, text: string, rewritten: Map<ZipEntry, Uint8Array>): OpenWorkbook {
  const { styles } = workbook;
  if (styles === undefined || text === styles.text) return workbook;
  rewritten.set(styles.entry, styles.encode(text));
  return { ...workbook, styles: styles.withText(text) };
}

/** Edits of one sheet as one, whatever number of pieces they come in. */
function togetherBySheet(edits: readonly SheetEdits[]): SheetEdits[] {
  return [...grouped(edits, ({ sheet }) => sheet)].map(([sheet, pieces]) => {
    const merges = pieces.findLast((piece) => piece.merges !== undefined)?.merges;
    return {
      sheet,
      cells: pieces.flatMap(({ cells }) => cells),
      looks: pieces.flatMap(({ looks = [] }) => looks),
      columns: pieces.flatMap(({ columns = [] }) => columns),
      rows: pieces.flatMap(({ rows = [] }) => rows),
      ...(merges && { merges }),
    };
  });
}
