import { type Archive, openZip, type ZipEntry } from '../zip/archive.ts';
import { defaultLimits, type ReadLimits } from '../zip/limits.ts';
import { cellBudget } from './cellBudget.ts';
import { refuseOpenDocument, refuseUnlessZip } from './container.ts';
import { interner } from './intern.ts';
import { readNumberStyles } from './styles.ts';
import { readTables } from './tables.ts';
import type { SheetTable } from '../../../cells/sheet.ts';
import { type SheetEntry, readWorkbookPart, type WorkbookPart } from './workbookPart.ts';
import { type SheetContext, type SheetKeeper, WorksheetPart } from './worksheet.ts';
import { readXml } from './xml.ts';
import { unescapeText } from './escapes.ts';
import { RichText } from './richText.ts';

/** A workbook whose sheets can be read one after the other, for whatever purpose. */
export interface OpenBook {
  readonly archive: Archive;
  readonly limits: ReadLimits;
  readonly book: WorkbookPart;
  /** Reads a sheet for its keeper; its tables. Throws FileRefused where it cannot be read in full. */
  readonly readSheet: (sheet: SheetEntry, keeper: SheetKeeper) => SheetTable[];
}

export interface ReadOptions {
  readonly limits?: Partial<ReadLimits>;
  /** Hears how much is done, from 0 to 1, several times a sheet. What it throws ends the reading. */
  readonly onProgress?: (fraction: number) => void;
}

/**
 * Opens a workbook of the .xlsx family (transitional or strict OOXML, with or without macros) from its bytes; what it is
 * shows in its content, not its name. Macros and links out of the file are never followed. Throws FileRefused for everything
 * that cannot be read in full.
 */
export function openBook(bytes: Uint8Array, options: ReadOptions = {}): OpenBook {
  refuseUnlessZip(bytes);
  const limits = { ...defaultLimits, ...options.limits };
  const archive = openZip(bytes, limits);
  refuseOpenDocument(archive);
  const book = readWorkbookPart(archive, limits);
  const total = [book.sharedStrings, ...book.sheets.map((sheet) => sheet.part)].reduce(
    (sum, part) => sum + (part?.size ?? 0),
    0,
  );
  let done = 0;
  const onBytes = (count: number): void => {
    done += count;
    options.onProgress?.(Math.min(1, done / total));
  };
  const intern = interner();
  const context: SheetContext = {
    sharedStrings:
      book.sharedStrings === undefined
        ? []
        : readSharedStrings(archive, book.sharedStrings, limits, intern, onBytes),
    date1904: book.date1904,
    intern,
    numberStyles: book.styles === undefined ? [] : readNumberStyles(archive, book.styles, limits),
    textLength: limits.textLength,
    spend: cellBudget(limits.cells),
  };
  return {
    archive,
    limits,
    book,
    readSheet({ name, part }, keeper) {
      readXml(archive, part, limits, new WorksheetPart(name, context, keeper), onBytes);
      return readTables(archive, part, limits);
    },
  };
}

/** The texts that cells point to by number (ECMA-376 part 1, section 18.4.9), in order. Throws FileRefused where the part is broken. */
function readSharedStrings(
  archive: Archive,
  part: ZipEntry,
  limits: ReadLimits,
  intern: (text: string) => string,
  onBytes?: (count: number) => void,
): string[] {
  const strings: string[] = [];
  const current = new RichText(limits.textLength);
  readXml(
    archive,
    part,
    limits,
    {
      open(name) {
        current.open(name);
      },
      close(name) {
        current.close(name);
        if (name === 'si') strings.push(intern(unescapeText(current.take())));
      },
      text(text) {
        current.add(text);
      },
    },
    onBytes,
  );
  return strings;
}
