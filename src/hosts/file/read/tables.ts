import type { SheetTable } from '../../../cells/sheet.ts';
import type { Archive, ZipEntry } from '../zip/archive.ts';
import type { ReadLimits } from '../zip/limits.ts';
import { FileRefused, oneLine } from '../zip/refused.ts';
import { parseArea } from './area.ts';
import { unescapeText } from './escapes.ts';
import { readRelationships } from './relationships.ts';
import { readXml } from './xml.ts';

/** The tables of a sheet (ECMA-376 part 1, section 18.5.1.2), by the links of its part. Throws FileRefused where one is missing or broken. */
export function readTables(archive: Archive, sheet: ZipEntry, limits: ReadLimits): SheetTable[] {
  return readRelationships(archive, sheet.name, limits)
    .filter((link) => link.kind === 'table')
    .map(({ target }) => {
      const part = archive.get(target);
      if (part === undefined) {
        throw new FileRefused(
          `Part “${oneLine(target)}” of the file is missing. Copy or download the file again, or save it anew as .xlsx.`,
        );
      }
      return readTable(archive, part, limits);
    });
}

function readTable(archive: Archive, part: ZipEntry, limits: ReadLimits): SheetTable {
  let table: SheetTable | undefined;
  readXml(archive, part, limits, {
    open(element, attributes, parents) {
      const area = parseArea(attributes['ref'] ?? '');
      if (parents.length > 0 || element !== 'table' || area === undefined) return;
      table = {
        name: unescapeText(attributes['displayName'] ?? attributes['name'] ?? ''),
        area,
        headerRow: Number(attributes['headerRowCount'] ?? 1) > 0,
        totalsRow: Number(attributes['totalsRowCount'] ?? 0) > 0,
      };
    },
  });
  if (table === undefined) {
    throw new FileRefused(
      `Part “${oneLine(part.name)}” of the file describes no table on the sheet. Open the file in a spreadsheet program and save it again.`,
    );
  }
  return table;
}
