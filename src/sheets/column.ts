import { columnLetters } from '../cells/address.ts';
import type { Area } from '../cells/sheet.ts';
import { cell } from './cells.ts';
import type { FormulaList } from './formulaList.ts';
import { heightOf } from './style/lines.ts';
import type { LinkTarget, ModelCell, ModelRow, ModelValue, RowLink } from './model.ts';

/** A column of a list on a result sheet: all that the sheet needs to know of it. */
export interface Column<Line> {
  /** By this formulas and the sheet itself name it. */
  readonly id: string;
  readonly header: string;
  /** In characters of the default font. */
  readonly width: number;
  /** Key into the sheet's styles. Texts of style `wrapped` make their row higher. */
  readonly style: string | ((line: Line) => string);
  readonly value: (line: Line) => ModelValue;
  /**
   * Native formula, without the leading `=`; `value` is then the result stored beside it. `[id]` is the cell of that column
   * in the same row, `[$name]` one of the list's own cells above it.
   */
  readonly formula?: string | ((line: Line) => string);
  /** Lines to which the formula applies; all where left out. */
  readonly applies?: (line: Line) => boolean;
  readonly link?: (line: Line) => LinkTarget | undefined;
  /** Style of the header, where it does not follow from that of the cells. */
  readonly headerStyle?: HeaderStyle;
  /** Its texts make the row higher whatever their style. */
  readonly wraps?: true;
}

type HeaderStyle = 'header' | 'headerCentred';

interface ListOptions<Line> {
  /** Whether headers stand over their cells: of words at the left, of others centred; at the left where left out. */
  readonly headersAsCells?: true;
  /** Lines that the highest row has at most. */
  readonly mostLines?: number;
  /** Addresses of the cells above the list that formulas name by `[$name]`. */
  readonly cells?: Readonly<Record<string, string>>;
  /** Lines that have formulas at all; every one where left out. */
  readonly formulasIn?: (line: Line) => boolean;
}

/** What a sheet makes of its columns. */
export interface ColumnList<Line> {
  readonly columns: readonly Column<Line>[];
  readonly widths: readonly number[];
  readonly headers: readonly (ModelCell | undefined)[];
  /** The formulas that are the same in every row, in the order of their columns; `{r}` is the row. */
  readonly formulas: readonly string[];
  /** Number of a column from 1; 0 where there is none of that id. */
  readonly numberOf: (id: string) => number;
  readonly letterOf: (id: string) => string;
  /** The cells of a column from row `top` to row `bottom`. */
  readonly below: (id: string, top: number, bottom: number) => Area;
  /** A formula with cells in place of names. Throws an Error for a name that is none of a cell here. */
  readonly spelled: (formula: string) => string;
  /** A row of other cells in these columns. Throws an Error for a cell of no column here. */
  readonly arranged: (cells: Readonly<Record<string, ModelCell | undefined>>) => ModelRow;
  /** The row of a line; `place` numbers its formulas, and where it is left out they are numbered as in `formulas`. */
  readonly row: (line: Line, place?: FormulaList['place']) => ModelRow;
}

/** Styles of words, whose headers stand at the left. */
const worded = new Set<unknown>(['text', 'strong', 'strongLink', 'wrapped', 'verdict']);

/** Columns from left to right, the first being A. Throws an Error for a formula that names no cell here. */
export function columnList<Line>(
  columns: readonly Column<Line>[],
  { headersAsCells, mostLines, cells = {}, formulasIn }: ListOptions<Line> = {},
): ColumnList<Line> {
  const numbers = new Map(columns.map(({ id }, index) => [id, index + 1]));
  const numberOf = (id: string): number => numbers.get(id) ?? 0;
  const letterOf = (id: string): string => columnLetters(numberOf(id));
  const spelled = (formula: string): string =>
    formula.replace(/\[(\$?)(\w+)\]/g, (_, dollar: string, name: string) => {
      const reference = dollar === '$' ? cells[name] : numbers.has(name) ? `${letterOf(name)}{r}` : undefined;
      if (reference === undefined) throw new Error(`formula names ${dollar}${name}, which is no cell here`);
      return reference;
    });
  const formulas: string[] = [];
  // All of one shape, which is quicker by the hundred thousand cells.
  const placed = columns.map(({ value, style, formula, applies }) => {
    const place = formulas.length;
    if (typeof formula === 'string') formulas.push(spelled(formula));
    return { value, style, formula, applies, place };
  });
  const wrapping = columns.map(({ style, wraps, width }) => (wraps || style === 'wrapped' ? width : 0));
  const isWrapped = wrapping.some((width) => width > 0);
  const linked = columns.flatMap(({ link }, index) => (link ? [{ link, number: index + 1 }] : []));
  const wrappedText = (one: ModelCell | undefined, index: number): string =>
    (wrapping[index] ?? 0) > 0 ? String(one?.value ?? '') : '';

  const textOf = ({ formula, place }: (typeof placed)[number], line: Line): string =>
    typeof formula === 'function' ? spelled(formula(line)) : (formulas[place] ?? '');
  const rowOf = (cells: readonly (ModelCell | undefined)[]): ModelRow =>
    isWrapped ? { height: heightOf(cells.map(wrappedText), wrapping, mostLines), cells } : { cells };
  return {
    columns,
    widths: columns.map(({ width }) => width),
    headers: columns.map(({ header, style, headerStyle }) =>
      cell(header, headerStyle ?? (headersAsCells && !worded.has(style) ? 'headerCentred' : 'header')),
    ),
    formulas,
    numberOf,
    letterOf,
    below: (id, top, bottom) => ({ top, left: numberOf(id), bottom, right: numberOf(id) }),
    spelled,
    arranged(cells) {
      const row: (ModelCell | undefined)[] = [];
      for (const [id, own] of Object.entries(cells)) {
        if (!numbers.has(id)) throw new Error(`a cell of ${id}, which is no column here`);
        row[numberOf(id) - 1] = own;
      }
      return rowOf(Array.from(row));
    },
    row(line, place) {
      const calculates = formulasIn?.(line) ?? true;
      const cells = placed.map((column): ModelCell | undefined => {
        const { value, style, formula } = column;
        const shown = value(line);
        const isGiven = formula === undefined || !calculates || column.applies?.(line) === false;
        if (isGiven && (shown === null || shown === '')) return undefined;
        const look = typeof style === 'string' ? style : style(line);
        if (isGiven) return { value: shown, style: look };
        return { value: shown, style: look, formula: place ? place(textOf(column, line)) : column.place };
      });
      const row = rowOf(cells);
      if (linked.length === 0) return row;
      const links: RowLink[] = [];
      for (const { link, number } of linked) {
        const to = link(line);
        if (to) links.push({ column: number, to });
      }
      return { ...row, links };
    },
  };
}

/** Columns of a block below a list, whose widths they take. */
export function blockList<Line>(columns: readonly Omit<Column<Line>, 'width'>[]): ColumnList<Line> {
  return columnList(columns.map((column) => ({ ...column, width: 0 })));
}
