import { namesOfTargets } from '../../../sheets/links.ts';
import type { ChartCells } from '../../../sheets/charts/model.ts';
import type { SheetModel } from '../../../sheets/model.ts';
import type { Deflater } from '../zip/deflater.ts';
import { collect } from '../zip/collect.ts';
import type { ZipEntry } from '../zip/archive.ts';
import { zipWriter } from '../zip/writer.ts';
import { freeNames } from '../../formats/reference.ts';
import { chartParts } from './charts/chartParts.ts';
import { watchDrawn } from './charts/drawnValues.ts';
import { editedParts } from './package/edits.ts';
import { withoutSelected } from './package/frontSheet.ts';
import { openWorkbook, type OpenWorkbook } from './package/openWorkbook.ts';
import { plannedParts } from './package/plannedParts.ts';
import { sheetLinks } from './package/sheetLinks.ts';
import { sheetNames } from './package/workbookPart.ts';
import { sheetBody } from './sheet/body.ts';
import { ByteStream } from './sheet/stream.ts';
import { longestText } from '../../../sheets/cells.ts';
import { appendStyles } from './styles/append.ts';
import { emptyStyleSheet } from './styles/empty.ts';
import { namedStyles } from './styles/namedStyles.ts';
import { tableParts } from './tableParts.ts';

export interface WriteOptions {
  /** Called now and then with the rows written so far and those to be written in all. */
  readonly onProgress?: (done: number, total: number) => void;
  /** Packs the new parts; by default fflate does, which runs anywhere. */
  readonly deflater?: Deflater;
}

export interface WrittenSheets {
  /** The name each sheet asked for and the one it got, in order. */
  readonly sheetNames: readonly { readonly wanted: string; readonly given: string }[];
  /** What a person should know about the copy; each is one sentence. */
  readonly notes: readonly string[];
}

export interface Written extends WrittenSheets {
  readonly bytes: Uint8Array;
}

/** As `addSheetsTo`, with the copy in memory. */
export function addSheets(
  original: Uint8Array,
  sheets: readonly SheetModel[],
  options: WriteOptions = {},
): Written {
  const { sink, bytes } = collect();
  const written = addSheetsTo(original, sheets, sink, options);
  return { ...written, bytes: bytes() };
}

/**
 * A copy of an .xlsx or .xlsm workbook with result sheets behind its own, handed to `sink` piece by piece. Only the list of parts, the workbook part,
 * its relationships and the style sheet are added to, and where the copy opens on a new sheet no other stays selected; every
 * other part is taken over byte for byte. Names of the
 * workbook's own sheets are never reused. Throws FileRefused for a file that cannot be added to, and an Error where
 * a model contradicts itself.
 */
export function addSheetsTo(
  original: Uint8Array,
  sheets: readonly SheetModel[],
  sink: (piece: Uint8Array) => void,
  options: WriteOptions = {},
): WrittenSheets {
  return writeCopy(openWorkbook(original), sheets, noChanges, sink, options);
}

/** What is different in parts that the new sheets do not touch. */
export interface PartChanges {
  readonly rewritten: ReadonlyMap<ZipEntry, Uint8Array>;
  /** The list of formula cells no longer holds: it is left out, and programs make it anew. */
  readonly withoutCalcChain: boolean;
}

const noChanges: PartChanges = { rewritten: new Map(), withoutCalcChain: false };

/** As `addSheetsTo`, for an opened workbook some of whose other parts change. Without new sheets those alone change. */
export function writeCopy(
  workbook: OpenWorkbook,
  sheets: readonly SheetModel[],
  changes: PartChanges,
  sink: (piece: Uint8Array) => void,
  options: WriteOptions = {},
): WrittenSheets {
  const wanted = sheets.map((sheet) => sheet.name);
  const own = sheetNames(workbook.workbook);
  const given = freeNames(wanted, own);
  const parts = plannedParts(workbook, sheets);
  const numbers = appendStyles(stylesFor(workbook, sheets), workbook.styles?.entry.name ?? 'styles');
  const renamed = new Map(
    wanted.map((name, index): [string, string] => [name, given[index] ?? name]).reverse(),
  );
  const watch = watchDrawn(sheets, workbook.from1904);
  const nameOf = namesOfTargets(sheets, given, own);
  const front = sheets.find(({ inFront }) => inFront === true);
  const bodies = sheets.map((sheet) =>
    sheetBody(watch.watching(sheet), workbook, numbers, { given: renamed, nameOf, isFront: sheet === front }),
  );
  const styles = sheets.length === 0 ? (workbook.styles?.text ?? '') : numbers.text();
  const dropped = changes.withoutCalcChain ? workbook.calcChain : undefined;

  const zip = zipWriter(sink, options.deflater);
  const edited = editedParts(workbook, sheets, given, parts, styles, dropped);
  const rewritten = front ? withoutSelected(workbook, changes.rewritten) : changes.rewritten;
  for (const entry of workbook.archive.entries) {
    if (entry === dropped) continue;
    const bytes = edited.get(entry) ?? rewritten.get(entry);
    if (bytes) zip.replace(entry, bytes);
    else zip.copy(entry);
  }
  if (parts.styles !== undefined) zip.add(parts.styles, new TextEncoder().encode(styles));

  const notes = workbook.signed ? [signatureNote] : [];
  const onRow = progress(sheets, options);
  const cuts = bodies.map((): string[] => []);
  for (const index of writingOrder(sheets)) {
    const out = new ByteStream(zip.begin(parts.sheets[index]?.sheet ?? ''));
    bodies[index]?.write(out, onRow, (address) => cuts[index]?.push(address));
    out.end();
  }
  cuts.forEach((cut, index) => {
    if (cut.length > 0) notes.push(cutNote(given[index] ?? '', cut));
  });
  for (const part of tableParts(workbook, sheets, parts)) {
    zip.add(part.name, new TextEncoder().encode(part.text));
  }
  for (const [index, sheet] of sheets.entries()) {
    const planned = parts.sheets[index];
    if (!planned) continue;
    const links = sheetLinks(planned, workbook.dialect);
    if (links) zip.add(links.name, new TextEncoder().encode(links.text));
    const name = given[index] ?? sheet.name;
    const nameOf = (cells: ChartCells): string =>
      cells.sheet === undefined ? name : (renamed.get(cells.sheet) ?? cells.sheet);
    for (const part of chartParts(sheet, planned, workbook.dialect, nameOf, watch)) {
      zip.add(part.name, new TextEncoder().encode(part.text));
    }
  }
  zip.finish();
  return {
    sheetNames: wanted.map((name, index) => ({ wanted: name, given: given[index] ?? name })),
    notes,
  };
}

/** The text of the style sheet that new sheets are added to; that of the workbook may be large and is left alone without any. */
function stylesFor({ styles, dialect, archive }: OpenWorkbook, sheets: readonly SheetModel[]): string {
  if (sheets.length === 0) return emptyStyleSheet(dialect);
  return styles?.text ?? emptyStyleSheet(dialect, namedStyles(archive));
}

/** Places of the sheets in the order in which their rows are made. */
function writingOrder(sheets: readonly SheetModel[]): readonly number[] {
  const last = (index: number): number => (sheets[index]?.writtenLast === true ? 1 : 0);
  return [...sheets.keys()].sort((one, other) => last(one) - last(other));
}

const signatureNote =
  'The workbook carries a digital signature; the copy is not what was signed, so its signature no longer holds.';

function cutNote(sheet: string, cells: readonly string[]): string {
  const first = cells.slice(0, 5).join(', ');
  const which = cells.length > 5 ? `${first} and ${cells.length - 5} more` : first;
  return `Sheet “${sheet}”: a cell holds ${longestText.toLocaleString('en')} characters; longer text was cut in ${which}.`;
}

const rowsBetweenReports = 2_000;

function progress(sheets: readonly SheetModel[], { onProgress }: WriteOptions): () => void {
  const total = sheets.reduce((sum, sheet) => sum + sheet.rowCount, 0);
  let done = 0;
  return () => {
    done++;
    if (done % rowsBetweenReports === 0 || done === total) onProgress?.(done, total);
  };
}
