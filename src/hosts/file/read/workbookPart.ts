import type { Archive, ZipEntry } from '../zip/archive.ts';
import type { ReadLimits } from '../zip/limits.ts';
import { FileRefused, oneLine } from '../zip/refused.ts';
import { unescapeText } from './escapes.ts';
import { type Relationship, readRelationships } from './relationships.ts';
import { booleanAttribute, prefixedAttribute, readXml } from './xml.ts';

export interface SheetEntry {
  readonly name: string;
  /** Hidden by the user, or by a program so that no menu shows it (`veryHidden`). */
  readonly hidden: boolean;
  readonly part: ZipEntry;
  /** Its place among the sheets of every kind, from 0: what the workbook part counts sheets by. */
  readonly tab: number;
}

/** What the workbook part says about the rest of the file. */
export interface WorkbookPart {
  readonly part: ZipEntry;
  /** Worksheets in their order; chart, dialog and macro sheets, and modules of old macros, have no cells to read and are left out. */
  readonly sheets: readonly SheetEntry[];
  /** Dates count from 1904-01-01 instead of 1900-01-01. */
  readonly date1904: boolean;
  readonly sharedStrings: ZipEntry | undefined;
  readonly styles: ZipEntry | undefined;
  readonly theme: ZipEntry | undefined;
}

/** Finds and reads the workbook part. Throws FileRefused where there is none, it is of another kind, or a part is missing. */
export function readWorkbookPart(archive: Archive, limits: ReadLimits): WorkbookPart {
  const partName = readRelationships(archive, '', limits).find(
    (link) => link.kind === 'officeDocument',
  )?.target;
  if (partName === undefined) {
    throw new FileRefused(
      'This is a zip file, but there is no workbook in it. Choose an .xlsx or .xlsm file.',
    );
  }
  if (partName.toLowerCase().endsWith('.bin')) {
    throw new FileRefused(
      'Binary workbooks (.xlsb) are not read. Open it in a spreadsheet program and save it as .xlsx.',
    );
  }
  const part = archive.get(partName) ?? missing(partName);
  const links = readRelationships(archive, part.name, limits);
  const linked = (kind: string): ZipEntry | undefined => {
    const link = links.find((candidate) => candidate.kind === kind);
    return link === undefined ? undefined : (archive.get(link.target) ?? missing(link.target));
  };
  /** Of a part without which cells look plain and say the same, as programs take it. */
  const present = (kind: string): ZipEntry | undefined => {
    const link = links.find((candidate) => candidate.kind === kind);
    return link && archive.get(link.target);
  };
  return {
    part,
    ...readSheetList(archive, part, links, limits),
    sharedStrings: linked('sharedStrings'),
    styles: present('styles'),
    theme: present('theme'),
  };
}

function readSheetList(
  archive: Archive,
  part: ZipEntry,
  links: readonly Relationship[],
  limits: ReadLimits,
): Pick<WorkbookPart, 'sheets' | 'date1904'> {
  const sheets: SheetEntry[] = [];
  const names = new Set<string>();
  let date1904 = false;
  let tabs = 0;
  readXml(archive, part, limits, {
    open(element, attributes, parents) {
      if (parents.length === 0 && element !== 'workbook') {
        throw new FileRefused(
          'This file is an office document, but not a workbook. Choose an .xlsx or .xlsm file.',
        );
      }
      if (element === 'workbookPr') date1904 = booleanAttribute(attributes['date1904']) === true;
      if (element !== 'sheet' || parents.at(-1) !== 'sheets') return;
      const tab = tabs++;
      const name = unescapeText(attributes['name'] ?? '');
      if (names.has(name.toLowerCase())) {
        throw new FileRefused(
          `Two sheets are named “${oneLine(name)}”. Rename one in a spreadsheet program and save it again.`,
        );
      }
      names.add(name.toLowerCase());
      const id = prefixedAttribute(attributes, 'id');
      // Macro modules of the 1990s, whose sheets have no part.
      if (id === '') return;
      const link = links.find((candidate) => candidate.id === id);
      if (link === undefined)
        throw new FileRefused(
          `Sheet “${oneLine(name)}” leads to no part of the file. Save it again as .xlsx.`,
        );
      if (link.kind !== 'worksheet') return;
      const hidden = attributes['state'] === 'hidden' || attributes['state'] === 'veryHidden';
      sheets.push({ name, hidden, part: archive.get(link.target) ?? missing(link.target), tab });
    },
  });
  return { sheets, date1904 };
}

function missing(partName: string): never {
  throw new FileRefused(
    `Part “${oneLine(partName)}” of the file is missing. Copy or download the file again, or save it anew as .xlsx.`,
  );
}
