import { readTables } from '../../read/tables.ts';
import { readRelationships } from '../../read/relationships.ts';
import { readWorkbookPart, type SheetEntry } from '../../read/workbookPart.ts';
import { writeCopy } from '../../write/addSheets.ts';
import { type EditablePart, editable } from '../../write/package/editable.ts';
import { openWorkbook } from '../../write/package/openWorkbook.ts';
import { attribute, child, childrenNamed } from '../../write/xml/outline.ts';
import { type Edit, splice } from '../../write/xml/splice.ts';
import { decodeXml, encodeXml } from '../../write/xml/encoding.ts';
import type { Archive, ZipEntry } from '../../zip/archive.ts';
import { collect } from '../../zip/collect.ts';
import { defaultLimits } from '../../zip/limits.ts';
import { movedBoxes, movedDrawing } from './movedAnchors.ts';
import { movedElement } from './movedElements.ts';
import { movedFormula } from './movedFormula.ts';
import { movedSheet } from './movedSheet.ts';
import { refusePivot, refuseTable } from './refuseMove.ts';
import { type Moves, type SheetMove, movedArea } from './axis.ts';
import { reference } from '../../../formats/reference.ts';
import { parseArea } from '../../read/area.ts';
import { withAttributes } from '../attributes.ts';
import { escapeXml } from '../../write/xml/text.ts';
import { contentOf } from './contentOf.ts';

export interface MovedWorkbook {
  readonly bytes: Uint8Array;
  /** What did not move; each is one sentence. */
  readonly notes: readonly string[];
}

/**
 * A workbook after rows and columns were inserted and deleted: cells with all they have, merged areas, tables, conditional
 * formats, rules for input, notes, drawings, breaks, names, pivot sources, and formulas and charts wherever they stand lead
 * to the new places. New rows and columns are empty. Throws FileRefused, with a cure, for steps that would damage a table, a
 * filter or a pivot table.
 */
export function movedWorkbook(original: Uint8Array, moves: readonly SheetMove[]): MovedWorkbook {
  const workbook = openWorkbook(original, false);
  const { archive } = workbook;
  const bySheet: Moves = new Map(moves.map((move) => [move.sheet.toLowerCase(), move]));
  const rewritten = new Map<ZipEntry, Uint8Array>();
  const rewrite = (part: EditablePart, edits: readonly Edit[]): void => {
    const text = splice(part.text, edits);
    if (text !== part.text) rewritten.set(part.entry, part.encode(text));
  };
  const formulasOn =
    (sheet: string) =>
    (stored: string): string =>
      movedFormula(stored, sheet, bySheet);

  for (const sheet of readWorkbookPart(archive, defaultLimits).sheets) {
    const move = bySheet.get(sheet.name.toLowerCase());
    const formulaOf = formulasOn(sheet.name);
    const xml = decodeXml(archive.bytes(sheet.part), sheet.part.name);
    if (move) for (const table of readTables(archive, sheet.part, defaultLimits)) refuseTable(table, move);
    if (move || leadsTo(xml.text, moves)) {
      const source = { text: xml.text, part: sheet.part.name, sheet: sheet.name };
      const text = movedSheet(source, move, formulaOf);
      if (text !== xml.text) rewritten.set(sheet.part, encodeXml({ ...xml, text }));
    }
    for (const [kind, part] of partsOf(archive, sheet)) {
      const how = { text: part.text, formulaOf, move };
      if (kind === 'pivotTable') {
        if (move) refusePivot(part.root, move);
      }
      const own = movedElement(part.root, how) ?? [];
      const placed =
        move && kind === 'drawing'
          ? movedDrawing(part.text, part.root, move)
          : move && kind === 'vmlDrawing'
            ? movedBoxes(part.text, part.root, move)
            : [];
      rewrite(part, withoutInner([...placed, ...own]));
    }
  }
  for (const part of declared(
    archive,
    workbook.contentTypes,
    /drawingml\.chart\+xml$|chartex\+xml$|controlproperties\+xml$/i,
  )) {
    rewrite(part, movedElement(part.root, { text: part.text, formulaOf: formulasOn('') }) ?? []);
  }
  for (const part of declared(archive, workbook.contentTypes, /pivotCacheDefinition\+xml$/i)) {
    rewrite(part, movedPivotSource(part, bySheet));
  }
  rewrite(workbook.workbook, movedNames(workbook.workbook, formulasOn('')));

  const { sink, bytes } = collect();
  const { notes } = writeCopy(workbook, [], { rewritten, withoutCalcChain: true }, sink);
  const hasMacros = archive.entries.some(({ name }) => /vbaProject\.bin$/i.test(name));
  return { bytes: bytes(), notes: hasMacros ? [...notes, macroNote] : notes };
}

const macroNote =
  'Rows or columns were inserted or deleted; macros of the file still name the places that they named before.';

/** Whether a part may hold a formula that leads to one of the sheets; most sheets hold none. */
function leadsTo(text: string, moves: readonly SheetMove[]): boolean {
  const lower = text.toLowerCase();
  return moves.some(({ sheet }) => {
    const [word = ''] = /[\p{L}\p{N}_]+/u.exec(sheet.toLowerCase()) ?? [];
    return lower.includes('!') && lower.includes(word);
  });
}

/** The parts that hang on a sheet and know places of it. */
function partsOf(archive: Archive, { part }: SheetEntry): [kind: string, part: EditablePart][] {
  const kinds = ['table', 'drawing', 'comments', 'vmlDrawing', 'threadedComment', 'pivotTable'];
  return readRelationships(archive, part.name, defaultLimits)
    .filter(({ kind }) => kinds.includes(kind))
    .map(({ kind, target }) => [kind, editable(archive, target)]);
}

/** The parts that the file declares to be of a type. */
function declared(archive: Archive, { root }: EditablePart, type: RegExp): EditablePart[] {
  return root.children
    .filter((element) => type.test(attribute(element, 'ContentType') ?? ''))
    .flatMap((element) => attribute(element, 'PartName') ?? [])
    .filter((name) => archive.get(name) !== undefined)
    .map((name) => editable(archive, name));
}

/** Edits without those inside of what another one takes out. */
function withoutInner(edits: readonly Edit[]): Edit[] {
  const removals = edits.filter(({ from, to, text }) => text === '' && to > from);
  return edits.filter(
    (edit) =>
      !removals.some((removal) => removal !== edit && edit.from >= removal.from && edit.to <= removal.to),
  );
}

/** Moves the range a pivot table takes its data from; one that is gone stays as it was, for the program to ask about. */
function movedPivotSource({ text, root }: EditablePart, moves: Moves): Edit[] {
  const cache = child(root, 'cacheSource');
  const source = cache && child(cache, 'worksheetSource');
  const move = source && moves.get((attribute(source, 'sheet') ?? '').toLowerCase());
  const area = source && parseArea(attribute(source, 'ref') ?? '');
  const after = move && area && movedArea(move, area);
  return after ? withAttributes(text, source, { ref: reference(after) }) : [];
}

/** Moves what the workbook's names mean; print areas, filters and the like go with the cells they are made of. */
function movedNames({ text, root }: EditablePart, formulaOf: (stored: string) => string): Edit[] {
  const list = child(root, 'definedNames');
  if (!list) return [];
  const names = childrenNamed(list, 'definedName');
  const gone: (typeof names)[number][] = [];
  const edits = names.flatMap((element): Edit[] => {
    const before = contentOf(text, element);
    const after = formulaOf(before);
    if (after === before) return [];
    if (attribute(element, 'name')?.startsWith('_xlnm.') && after.includes('#REF!')) {
      gone.push(element);
      return [{ from: element.start, to: element.end, text: '' }];
    }
    return [{ from: element.openEnd, to: element.closeStart, text: escapeXml(after) }];
  });
  return gone.length === names.length && gone.length > 0
    ? [{ from: list.start, to: list.end, text: '' }]
    : edits;
}
