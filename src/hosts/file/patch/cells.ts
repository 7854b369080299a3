import { isSameFormula } from '../../formats/formulaTokens.ts';
import { reference } from '../../formats/reference.ts';
import { shownFormula, storedFormula } from '../../formats/storedFormula.ts';
import type { Edit } from '../write/xml/splice.ts';
import { escapeXml, escapeCellText } from '../write/xml/text.ts';
import { withAttributes } from './attributes.ts';
import type { FormulaCell, FormulaGroups } from './groups.ts';
import type { CellPlace } from './sheetMap.ts';
import type { EditedCell } from './types.ts';
import { columnLetters } from '../../../cells/address.ts';
import { longestText, writable } from '../../../sheets/cells.ts';
import { FileRefused, oneLine } from '../zip/refused.ts';
import { inlineText } from '../write/sheet/values.ts';

/** A formula holds this many characters (common practice of spreadsheet programs, no source). */
const longestFormula = 8_192;

/** Attributes a rewritten cell element begins with, each with a space before it; the address is added. */
type KeptAttributes = string;

/** What the cells of one sheet are rewritten with. */
export interface CellContext {
  readonly sheet: string;
  readonly text: string;
  readonly groups: FormulaGroups;
  /** Declares the namespace of spreadsheets, where the part's own elements have a prefix; else empty. */
  readonly namespace: string;
  /** The edit of a cell, if it has one. */
  readonly editOf: (row: number, column: number) => EditedCell | undefined;
  /** The style that a cell gets, by its number, from the one it had. */
  readonly styleOf: (row: number, column: number, style: string | undefined) => string | undefined;
}

/** How a cell was rewritten. */
export interface CellChange {
  readonly edits: readonly Edit[];
  /** A formula came or went, so that the list of formula cells no longer holds. */
  readonly formulasChanged: boolean;
}

/**
 * Rewrites a cell in its place: its style stays, and so does the formula's own markup where the formula is the same
 * and only its result is new. Where a formula goes that others share, they get it in full.
 */
export function rewrittenCell(place: CellPlace, edit: EditedCell, context: CellContext): CellChange {
  const { formula } = place;
  const stays = formula !== undefined && isKept({ ...place, formula }, edit, context.groups);
  const markup = stays
    ? keptFormula({ ...place, formula }, edit, context)
    : formulaMarkup(edit, context.sheet);
  const kept = context.namespace + keptAttributes(place, stays, context);
  const whole = {
    from: place.start,
    to: place.end,
    text: cellMarkup(edit, kept, markup, context.sheet),
  };
  const expanded = formula === undefined || stays ? [] : expandedFollowers({ ...place, formula }, context);
  return {
    edits: [whole, ...expanded],
    formulasChanged: (formula !== undefined) !== (markup !== ''),
  };
}

/** Gives a cell another style and leaves what it holds as it is. */
export function restyledCell(place: CellPlace, { text, styleOf }: CellContext): readonly Edit[] {
  const { row, column, attributes } = place;
  const style = styleOf(row, column, attributes['s']);
  return style === attributes['s'] ? [] : withAttributes(text, place, { s: style });
}

/** A cell that the file has no element for; `style` is that of its row or column. */
export function newCell(edit: EditedCell, style: string | undefined, context: CellContext): string {
  const kept = context.namespace + (style === undefined ? '' : ` s="${escapeXml(style)}"`);
  return cellMarkup(edit, kept, formulaMarkup(edit, context.sheet), context.sheet);
}

function isKept(cell: FormulaCell, edit: EditedCell, groups: FormulaGroups): boolean {
  const full = groups.fullFormula(cell);
  if (edit.formula === undefined || full === undefined) return false;
  const isArray = cell.formula.attributes['t'] === 'array';
  return isSameFormula(edit.formula, shownFormula(full)) && (isArray || edit.array === undefined);
}

/** The formula's markup as it stands: an array formula's with the area it fills now, in full where what it shares goes. */
function keptFormula(
  cell: FormulaCell,
  edit: EditedCell,
  { text, groups, editOf, sheet }: CellContext,
): string {
  const { formula } = cell;
  const master = groups.masterOf(cell);
  const masterEdit = master && editOf(master.row, master.column);
  if (master && masterEdit && master.start !== cell.start && !isKept(master, masterEdit, groups)) {
    return formulaMarkup(edit, sheet);
  }
  if (edit.array === undefined) return text.slice(formula.start, formula.end);
  const tag = text
    .slice(formula.start, formula.openEnd)
    .replace(/(\sref\s*=\s*)("[^"]*"|'[^']*')/, `$1"${reference(edit.array)}"`);
  return tag + text.slice(formula.openEnd, formula.end);
}

/** Attributes that stay. `cm` says that a formula spills, so it goes with it; `vm` belongs to a value that is replaced. */
function keptAttributes(
  { row, column, attributes: { s, ph, cm } }: CellPlace,
  formulaStays: boolean,
  { styleOf }: CellContext,
): string {
  const kept = { s: styleOf(row, column, s), ph, cm: formulaStays ? cm : undefined };
  return Object.entries(kept)
    .map(([name, value]) => (value === undefined ? '' : ` ${name}="${escapeXml(value)}"`))
    .join('');
}

function expandedFollowers(cell: FormulaCell, { groups, editOf }: CellContext): Edit[] {
  return groups
    .followers(cell)
    .filter(({ row, column }) => editOf(row, column) === undefined)
    .map((follower) => fullyWritten(follower, groups));
}

/** Puts the formula in full where a cell only said whose it shares. */
function fullyWritten({ formula, ...cell }: FormulaCell, groups: FormulaGroups): Edit {
  const full = groups.fullFormula({ ...cell, formula }) ?? '';
  return {
    from: formula.start,
    to: formula.end,
    text: `<${formula.name}>${escapeXml(full)}</${formula.name}>`,
  };
}

/** The markup of an edited formula. Throws FileRefused for one that is longer than a cell holds. */
function formulaMarkup(edit: EditedCell, sheet: string): string {
  if (edit.formula === undefined) return '';
  const stored = storedFormula(edit.formula);
  if (stored.length > longestFormula) throw tooLong(edit, sheet, 'formula', longestFormula);
  const array = edit.array === undefined ? '' : ` t="array" ref="${reference(edit.array)}"`;
  return `<f${array}>${escapeXml(stored)}</f>`;
}

/**
 * A cell element with its value; `formula` is the markup of its formula or empty. Text is stored in the cell itself and
 * is never a formula. Throws FileRefused for a text that is longer than a cell holds.
 */
function cellMarkup(edit: EditedCell, kept: KeptAttributes, formula: string, sheet: string): string {
  const start = `<c r="${columnLetters(edit.column)}${edit.row}"${kept}`;
  const value = typeof edit.value === 'number' ? writable(edit.value) : edit.value;
  if (value === null || (value === '' && formula === '')) {
    return formula === '' ? `${start}/>` : `${start}>${formula}</c>`;
  }
  if (typeof value === 'number') return `${start}>${formula}<v>${value}</v></c>`;
  if (typeof value === 'boolean') return `${start} t="b">${formula}<v>${Number(value)}</v></c>`;
  if (edit.error === true) return `${start} t="e">${formula}<v>${escapeXml(value)}</v></c>`;
  if (value.length > longestText) throw tooLong(edit, sheet, 'text', longestText);
  if (formula === '') return start + inlineText(value);
  return `${start} t="str">${formula}<v>${escapeCellText(value)}</v></c>`;
}

function tooLong({ row, column }: EditedCell, sheet: string, what: string, most: number): FileRefused {
  return new FileRefused(
    `Sheet “${oneLine(sheet)}”, cell ${columnLetters(column)}${row}: the ${what} is longer than the ${most.toLocaleString('en')} characters a cell holds. Shorten it.`,
  );
}
