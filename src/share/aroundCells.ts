import type { Area } from '../cells/sheet.ts';
import { aroundRows } from '../hosts/file/patch/aroundRows.ts';
import { mapSheet } from '../hosts/file/patch/sheetMap.ts';
import { readRelationships } from '../hosts/file/read/relationships.ts';
import { readWorkbookPart } from '../hosts/file/read/workbookPart.ts';
import type { OpenWorkbook } from '../hosts/file/write/package/openWorkbook.ts';
import type { PackageEdits } from '../hosts/file/write/package/packageEdits.ts';
import { outline, child, type Element } from '../hosts/file/write/xml/outline.ts';
import { type Edit, splice } from '../hosts/file/write/xml/splice.ts';
import { escapeXml } from '../hosts/file/write/xml/text.ts';
import { defaultLimits } from '../hosts/file/zip/limits.ts';
import { shownFormula, storedFormula } from '../hosts/formats/storedFormula.ts';
import { bookNames } from './bookNames.ts';
import { type Changed, type LeftOut, leftOutOf } from './leftOut.ts';
import type { UsesOfFunctions } from './usesOfFunctions.ts';
import { withoutSpillSigns } from './spillSigns.ts';
import { leftOutNote, nameNote, whatIfNote } from './words.ts';
import { withAttributes } from '../hosts/file/patch/attributes.ts';

/** What is known of the copy's cells. */
export interface AroundOrder {
  readonly use: UsesOfFunctions;
  readonly filledFrom: (sheet: string, row: number, column: number) => Area | undefined;
  /** Some cells do not follow others any more, so tables of what-ifs would come out wrong. */
  readonly frozen: boolean;
  /** Some results are out of date until a program calculates them. */
  readonly calculate: boolean;
}

/** Changes what has formulas around the cells: rules of sheets, tables, names; what to tell of it, one sentence each. */
export function aroundCells(book: OpenWorkbook, changes: PackageEdits, order: AroundOrder): string[] {
  const notes: string[] = [];
  const formulaOn =
    (sheet: string): Changed =>
    (stored) => {
      if (order.use.uses(stored)) return undefined;
      const shown = shownFormula(stored);
      const now = withoutSpillSigns(shown, sheet, order.filledFrom);
      return now === shown ? stored : storedFormula(now);
    };
  for (const { name, part } of readWorkbookPart(book.archive, defaultLimits).sheets) {
    const hear = (gone: LeftOut): void => {
      notes.push(leftOutNote(name, gone));
    };
    const text = changes.text(part.name);
    const map = mapSheet(text, part.name, name, () => false);
    const around = aroundRows(text, part.name, map);
    const edits = around.back(leftOutOf(around.text, around.root, formulaOn(name), hear));
    const whatIfs = order.frozen
      ? map.groups.filter(({ formula }) => formula.attributes['t'] === 'dataTable')
      : [];
    if (whatIfs.length > 0) {
      notes.push(
        whatIfNote(
          name,
          whatIfs.map(({ formula }) => formula.attributes['ref'] ?? ''),
        ),
      );
    }
    const values = whatIfs.map(({ formula }): Edit => ({ from: formula.start, to: formula.end, text: '' }));
    change(changes, part.name, text, [...edits, ...values]);
    for (const { kind, target } of readRelationships(book.archive, part.name, defaultLimits)) {
      if (kind !== 'table') continue;
      const table = changes.text(target);
      change(changes, target, table, leftOutOf(table, outline(table, target), formulaOn(name), hear));
    }
  }
  const workbook = book.workbook.entry.name;
  const text = changes.text(workbook);
  const root = outline(text, workbook);
  const names = bookNames(text, root).flatMap(({ name, refersTo, element }): Edit[] => {
    const now = formulaOn('')(refersTo);
    if (now === refersTo) return [];
    if (now === undefined) notes.push(nameNote(name, refersTo));
    return [{ from: element.openEnd, to: element.closeStart, text: escapeXml(now ?? '#REF!') }];
  });
  change(changes, workbook, text, [...names, ...(order.calculate ? calculateOnOpening(text, root) : [])]);
  return notes;
}

function change(changes: PackageEdits, part: string, text: string, edits: readonly Edit[]): void {
  if (edits.length > 0) changes.put(part, splice(text, edits));
}

/** Has programs calculate everything when they open the workbook (ECMA-376 part 1, section 18.2.2); `text` is the workbook part's. */
function calculateOnOpening(text: string, root: Element): Edit[] {
  const settings = child(root, 'calcPr');
  if (settings) return withAttributes(text, settings, { fullCalcOnLoad: '1' });
  const before = ['definedNames', 'externalReferences', 'functionGroups', 'sheets']
    .map((local) => child(root, local))
    .find((element) => element !== undefined);
  return before
    ? [{ from: before.end, to: before.end, text: `<${root.prefix}calcPr fullCalcOnLoad="1"/>` }]
    : [];
}
