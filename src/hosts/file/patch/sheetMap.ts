import type { Area } from '../../../cells/sheet.ts';
import { parseArea } from '../read/area.ts';
import { Branches, type Attributes } from '../read/branches.ts';
import { placingParser } from '../read/placingParser.ts';
import { SheetPlace } from '../read/sheetPlace.ts';
import { booleanAttribute } from '../read/xml.ts';

/** Where an element stands in its part's text, in UTF-16 units. */
export interface Span {
  /** Before `<` of the opening tag. */
  readonly start: number;
  /** After `>` of the opening tag. */
  readonly openEnd: number;
  /** Before the closing tag; `openEnd` where the element closes itself. */
  readonly closeStart: number;
  readonly end: number;
  readonly selfClosing: boolean;
  /** With its prefix. */
  readonly name: string;
}

type Growing<T> = { -readonly [Key in keyof T]: T[Key] };

export interface FormulaPlace extends Span {
  readonly attributes: Attributes;
  readonly text: string;
}

export interface CellPlace extends Span {
  readonly row: number;
  readonly column: number;
  readonly attributes: Attributes;
  readonly formula?: FormulaPlace;
  /** A value, a text or a formula stands in it. */
  readonly isFilled: boolean;
}

export interface RowPlace extends Span {
  readonly row: number;
  /** Style of the cells that the row stores nothing for. */
  readonly style: string | undefined;
  /** Cells in the order of the text; kept for the rows that were asked for. */
  readonly cells: CellPlace[];
}

export interface ColumnPlace {
  readonly first: number;
  readonly last: number;
  readonly attributes: Attributes;
}

/** What a worksheet part's text holds, and where. */
export interface SheetMap {
  readonly rows: readonly RowPlace[];
  /** All cells that share a formula, or hold an array formula or a table of what-ifs. */
  readonly groups: readonly (CellPlace & { readonly formula: FormulaPlace })[];
  readonly sheetData: Span;
  readonly dimension: (Span & { readonly area: Area | undefined }) | undefined;
  /** Runs of columns that the sheet says something of, and the element around them. */
  readonly columns: readonly ColumnPlace[];
  readonly cols: Span | undefined;
  /** Among the rows stand alternatives, of which programs take one or another. */
  readonly hasAlternatives: boolean;
  /** All that stands in the part beside one another, in its order; of alternatives the element around them. */
  readonly around: readonly (Span & { readonly local: string })[];
}

/**
 * Finds the rows and cells of a worksheet part's text. Throws FileRefused for text that is not well-formed or has a
 * document type, for cells off the sheet, and for a part that has no place for rows.
 */
export function mapSheet(
  text: string,
  part: string,
  sheetName: string,
  wanted: (row: number) => boolean,
): SheetMap {
  const { parser, tag, damaged } = placingParser(text, part);
  const place = new SheetPlace(sheetName);
  const branches = new Branches();
  const open: Growing<Span>[] = [];
  const locals: string[] = [];
  const rows: RowPlace[] = [];
  const groups: (CellPlace & { readonly formula: FormulaPlace })[] = [];
  const columns: ColumnPlace[] = [];
  const around: (Growing<Span> & { local: string })[] = [];
  let sheetData: Span | undefined;
  let dimension: SheetMap['dimension'];
  let row: RowPlace | undefined;
  let cell: Growing<CellPlace> | undefined;
  let formula: Growing<FormulaPlace> | undefined;
  let hasAlternatives = false;

  const onOpen = (span: Growing<Span>, local: string, attributes: Attributes): void => {
    if (locals.length === 1) {
      if (!branches.isAlternative) around.push(Object.assign(span, { local }));
      if (local === 'sheetData') sheetData ??= span;
      else if (local === 'dimension')
        dimension = Object.assign(span, { area: parseArea(attributes['ref'] ?? '') });
    } else if (locals[1] === 'cols') {
      const { min, max } = attributes;
      if (local === 'col') columns.push({ first: Number(min), last: Number(max), attributes });
    } else if (locals[1] !== 'sheetData') return;
    else if (locals.length === 2 && local === 'row') {
      place.startRow(attributes);
      const style = booleanAttribute(attributes['customFormat']) === true ? attributes['s'] : undefined;
      row = Object.assign(span, { row: place.row, style, cells: [] });
      rows.push(row);
    } else if (locals.length === 3 && local === 'c' && row !== undefined) {
      place.startCell(attributes, (turned) => {
        Object.assign(row ?? {}, { row: turned });
      });
      cell = Object.assign(span, { row: place.row, column: place.column, attributes, isFilled: false });
    } else if (locals.length !== 4 || cell === undefined) return;
    else if (local === 'v' || local === 'is') cell.isFilled = true;
    else if (local === 'f') {
      cell.isFilled = true;
      formula = Object.assign(span, { attributes, text: '' });
      cell.formula = formula;
    }
  };
  const onCellEnd = (ended: CellPlace): void => {
    if (wanted(ended.row)) row?.cells.push(ended);
    if (ended.formula?.attributes['t'] !== undefined && ended.formula.attributes['t'] !== 'normal') {
      groups.push({ ...ended, formula: ended.formula });
    }
  };

  parser.on('opentag', ({ name, attributes, isSelfClosing }) => {
    const at = parser.position;
    const span = {
      start: tag.start,
      openEnd: at,
      closeStart: at,
      end: at,
      selfClosing: isSelfClosing,
      name,
    };
    open.push(span);
    const isOuter = branches.isAlternative;
    const reading = branches.open(name, attributes);
    if (reading === 'read') {
      const local = branches.localName(name);
      onOpen(span, local, attributes);
      locals.push(local);
    } else if (locals[1] === 'sheetData') hasAlternatives = true;
    else if (locals.length === 1 && !isOuter) around.push(Object.assign(span, { local: 'AlternateContent' }));
  });
  parser.on('closetag', () => {
    const span = open.pop();
    if (branches.close() === 'read') locals.pop();
    if (span === undefined) return;
    if (!span.selfClosing) {
      span.end = parser.position;
      span.closeStart = text.lastIndexOf('</', parser.position - 1);
    }
    if (span === formula) formula = undefined;
    else if (span === cell) {
      onCellEnd(cell);
      cell = undefined;
    }
  });
  const onText = (run: string): void => {
    if (formula !== undefined && open.at(-1) === formula) formula.text += run;
  };
  parser.on('text', onText);
  parser.on('cdata', onText);
  parser.write(text).close();
  if (sheetData === undefined) throw damaged('it has no place for cells');
  const cols = around.find(({ local }) => local === 'cols');
  return { rows, groups, sheetData, dimension, columns, cols, hasAlternatives, around };
}
