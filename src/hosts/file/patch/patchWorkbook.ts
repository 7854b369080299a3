import type { SheetModel } from '../../../sheets/model.ts';
import { readTables } from '../read/tables.ts';
import { readWorkbookPart } from '../read/workbookPart.ts';
import { writeCopy, type WriteOptions, type WrittenSheets } from '../write/addSheets.ts';
import { openWorkbook } from '../write/package/openWorkbook.ts';
import { decodeXml, encodeXml } from '../write/xml/encoding.ts';
import type { ZipEntry } from '../zip/archive.ts';
import { defaultLimits } from '../zip/limits.ts';
import { FileRefused, oneLine } from '../zip/refused.ts';
import { grouped } from './grouped.ts';
import { patchSheet } from './patchSheet.ts';
import type { SheetEdits } from './types.ts';

/**
 * A copy of an .xlsx or .xlsm workbook in which edited cells say something else, with new sheets behind its own, handed
 * to `sink` piece by piece. In the parts of edited sheets only those cells are rewritten, and cells that shared a formula
 * with one of them; all that a grid cannot show (charts, macros, comments, rules for input) is taken over byte for byte.
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
    const source = { text: xml.text, part: part.name, main: dialect.main, tables };
    const patched = patchSheet(source, edit);
    if (patched.text !== xml.text) rewritten.set(part, encodeXml({ ...xml, text: patched.text }));
    formulasChanged ||= patched.formulasChanged;
  }
  return writeCopy(workbook, newSheets, { rewritten, withoutCalcChain: formulasChanged }, sink, options);
}

/** Edits of one sheet as one, whatever number of pieces they come in. */
function togetherBySheet(edits: readonly SheetEdits[]): SheetEdits[] {
  return [...grouped(edits, ({ sheet }) => sheet)].map(([sheet, pieces]) => ({
    sheet,
    cells: pieces.flatMap(({ cells }) => cells),
  }));
}
