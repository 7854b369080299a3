import { readRelationships } from '../../read/relationships.ts';
import { openZip } from '../../zip/archive.ts';
import { defaultLimits } from '../../zip/limits.ts';
import { FileRefused } from '../../zip/refused.ts';
import { attribute, type Element } from '../xml/outline.ts';
import { type Edit, replaceAttribute } from '../xml/splice.ts';
import { editable, type EditablePart } from './editable.ts';
import { workbookType } from './namespaces.ts';

const macroWorkbookType = 'application/vnd.ms-excel.sheet.macroEnabled.main+xml';

/** What a workbook made from a template is, by the type of the template. */
const madeFrom: ReadonlyMap<string, string> = new Map([
  [workbookType.replace('.sheet.', '.template.'), workbookType],
  [macroWorkbookType.replace('.sheet.', '.template.').toLowerCase(), macroWorkbookType],
]);

/** Makes the copy of a template (.xltx, .xltm) a workbook, as its name says; nothing to do for other files. */
export function asWorkbook({ text, root }: EditablePart, workbook: string): readonly Edit[] {
  const element = declarationOf(root, workbook);
  const made = element && madeFrom.get((attribute(element, 'ContentType') ?? '').toLowerCase());
  const edit = element && made && replaceAttribute(text, element, 'ContentType', made);
  return edit ? [edit] : [];
}

/** The ending of the name of a file's copy: macros stay in an .xlsm alone. `undefined` where that can't be told of the file. */
export function copyEnding(bytes: Uint8Array): '.xlsx' | '.xlsm' | undefined {
  try {
    const archive = openZip(bytes, defaultLimits);
    const book = readRelationships(archive, '', defaultLimits).find(({ kind }) => kind === 'officeDocument');
    const types = editable(archive, '[Content_Types].xml');
    const element = book && declarationOf(types.root, book.target);
    const type = element && attribute(element, 'ContentType')?.toLowerCase();
    return type === undefined ? undefined : type.includes('.macroenabled.') ? '.xlsm' : '.xlsx';
  } catch (error) {
    if (error instanceof FileRefused) return undefined;
    throw error;
  }
}

/** What declares the type of a part: its own entry, else that of its ending. */
function declarationOf(root: Element, part: string): Element | undefined {
  const lower = part.toLowerCase();
  const own = root.children.find(
    (element) => attribute(element, 'PartName')?.replace(/^\//, '').toLowerCase() === lower,
  );
  const ending = lower.slice(lower.lastIndexOf('.') + 1);
  return own ?? root.children.find((element) => attribute(element, 'Extension')?.toLowerCase() === ending);
}
