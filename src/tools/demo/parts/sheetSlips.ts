import { outline, attribute, child } from '../../../hosts/file/write/xml/outline.ts';
import { splice } from '../../../hosts/file/write/xml/splice.ts';
import { partNamed, type Parts } from '../package/parts.ts';

/** Hides rows of a sheet; rows count from 1. Throws an Error for a row that the sheet does not have. */
export function hideRows(parts: Parts, sheet: string, rows: readonly number[]): void {
  const text = partNamed(parts, sheet);
  const written = child(outline(text, sheet), 'sheetData')?.children ?? [];
  const edits = rows.map((row) => {
    const element = written.find((candidate) => attribute(candidate, 'r') === String(row));
    if (!element) throw new Error(`${sheet} has no row ${row}`);
    const at = element.start + `<${element.name}`.length;
    return { from: at, to: at, text: ' hidden="1"' };
  });
  parts.set(sheet, splice(text, edits));
}

/** Turns cells whose text is this error code into what a spreadsheet leaves behind where a reference was lost. */
export function textsToErrors(parts: Parts, sheet: string, code: string): void {
  const text = partNamed(parts, sheet);
  const asText = ` t="inlineStr"><is><t>${code}</t></is></c>`;
  parts.set(sheet, text.replaceAll(asText, ` t="e"><v>${code}</v></c>`));
}
