import { reference } from '../../../formats/reference.ts';
import { lastColumn, parseArea } from '../../read/area.ts';
import { attribute, type Element } from '../../write/xml/outline.ts';
import type { Edit } from '../../write/xml/splice.ts';
import { escapeXml } from '../../write/xml/text.ts';
import { withAttributes } from '../attributes.ts';
import { type Axis, moved, movedSpan, type SheetMove, movedArea } from './axis.ts';
import { contentOf } from './contentOf.ts';

/** How the elements of a part move. */
export interface ElementMove {
  readonly text: string;
  readonly formulaOf: (stored: string) => string;
  /** What its own sheet does; left out for parts whose sheet stays as it is. */
  readonly move?: SheetMove | undefined;
}

const formulas: ReadonlySet<string> = new Set([
  ...['f', 'formula', 'formula1', 'formula2', 'definedName', 'calculatedColumnFormula', 'totalsRowFormula'],
  ...['FmlaLink', 'FmlaRange', 'FmlaGroup', 'FmlaTxbx'],
]);
const linkAttributes = ['textlink', 'fmlaLink', 'fmlaRange', 'fmlaGroup', 'fmlaTxbx'];
const formulaAttributes: ReadonlyMap<string, readonly string[]> = new Map([
  ['cfvo', ['val']],
  ['hyperlink', ['location']],
]);
/** Elements that mean nothing once the cells are gone to which they belong. */
const bound: ReadonlySet<string> = new Set([
  ...['mergeCell', 'hyperlink', 'conditionalFormatting', 'dataValidation', 'protectedRange', 'ignoredError'],
  ...[
    'cellWatch',
    'inputCells',
    'autoFilter',
    'sortState',
    'sortCondition',
    'comment',
    'threadedComment',
    'brk',
    'col',
  ],
  ...['sparkline'],
]);
/** Elements that are left out with the last thing they hold. */
const containers: ReadonlySet<string> = new Set([
  ...[
    'mergeCells',
    'hyperlinks',
    'dataValidations',
    'protectedRanges',
    'ignoredErrors',
    'cellWatches',
    'cols',
  ],
  ...[
    'rowBreaks',
    'colBreaks',
    'conditionalFormattings',
    'sparklines',
    'sparklineGroup',
    'sparklineGroups',
    'ext',
  ],
  ...['extLst', 'scenario', 'scenarios'],
]);

/** Edits that move an element and all in it; `undefined` where it goes, because its cells did. */
export function movedElement(element: Element, how: ElementMove, parent = ''): Edit[] | undefined {
  const { local } = element;
  if (formulas.has(local)) return movedContent(element, how, how.formulaOf);
  const own = movedAttributes(element, how, parent);
  if (own === undefined) return undefined;
  if (local === 'sqref') {
    // Charts say it with the sheet's name.
    return movedContent(
      element,
      how,
      how.move ? (areas) => movedAreas(areas, how.move) ?? '' : how.formulaOf,
    );
  }
  const edits: Edit[] = [...own];
  let kept = 0;
  for (const part of element.children) {
    const inside = movedElement(part, how, local);
    if (inside === undefined && part.local === 'sqref') return undefined;
    if (inside === undefined) edits.push({ from: part.start, to: part.end, text: '' });
    else edits.push(...inside);
    if (inside !== undefined) kept++;
  }
  if (kept === element.children.length) return edits;
  if (kept === 0 && containers.has(local)) return undefined;
  return [...edits, ...recounted(element, how, kept)];
}

function movedContent(
  element: Element,
  { text }: ElementMove,
  after: (before: string) => string,
): Edit[] | undefined {
  const before = contentOf(text, element);
  const now = after(before);
  if (now === '' && before !== '') return undefined;
  if (now === before || element.selfClosing) return [];
  return [{ from: element.openEnd, to: element.closeStart, text: escapeXml(now) }];
}

function movedAttributes(element: Element, how: ElementMove, parent: string): Edit[] | undefined {
  const { text, formulaOf, move } = how;
  const values: Record<string, string | undefined> = {};
  for (const name of formulaAttributes.get(element.local) ?? linkAttributes) {
    const stored = attribute(element, name);
    if (stored !== undefined && formulaOf(stored) !== stored) values[name] = formulaOf(stored);
  }
  if (!move) return withAttributes(text, element, values);
  const isBound = bound.has(element.local);
  for (const name of areaAttributes(element)) {
    const stored = attribute(element, name);
    if (stored === undefined || stored === '') continue;
    const after = movedAreas(stored, move);
    if (after === undefined && isBound) return undefined;
    if (after !== stored) values[name] = after ?? (name === 'ref' ? 'A1' : undefined);
  }
  if (element.local === 'mergeCell' && values['ref'] !== undefined && !values['ref'].includes(':'))
    return undefined;
  if (parent === 'cols') return movedColumns(element, how, move);
  if (element.local === 'brk')
    return movedBreak(element, how, parent === 'rowBreaks' ? move.rows : move.columns);
  return withAttributes(text, element, values);
}

function areaAttributes({ local }: Element): readonly string[] {
  return local === 'cellWatch' || local === 'inputCells'
    ? ['r']
    : ['ref', 'sqref', 'activeCell', 'topLeftCell'];
}

/** Areas with white space between them; `undefined` where none is left. What is no area stays. */
function movedAreas(stored: string, move: SheetMove | undefined): string | undefined {
  if (!move) return stored;
  const left = stored.split(/\s+/).flatMap((name) => {
    const area = parseArea(name.replaceAll('$', ''));
    if (area === undefined) return [name];
    const after = movedArea(move, area);
    return after ? [reference(after)] : [];
  });
  return left.length === 0 ? undefined : left.join(' ');
}

function movedColumns(element: Element, { text }: ElementMove, { columns }: SheetMove): Edit[] | undefined {
  const [min, max] = [Number(attribute(element, 'min')), Number(attribute(element, 'max'))];
  const span = movedSpan(columns, min, max, lastColumn);
  return span && withAttributes(text, element, { min: String(span[0]), max: String(span[1]) });
}

/** A page break stands behind the row or column of its number. */
function movedBreak(element: Element, { text }: ElementMove, axis: Axis): Edit[] | undefined {
  const after = moved(axis, Number(attribute(element, 'id')));
  return after === undefined ? undefined : withAttributes(text, element, { id: String(after) });
}

function recounted(element: Element, { text }: ElementMove, kept: number): Edit[] {
  const counts = ['count', 'manualBreakCount'].filter((name) => attribute(element, name) !== undefined);
  return withAttributes(text, element, Object.fromEntries(counts.map((name) => [name, String(kept)])));
}
