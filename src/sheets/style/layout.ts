import type { Area } from '../../cells/sheet.ts';
import { cell } from '../cells.ts';
import { linkAt } from '../links.ts';
import type { LinkTarget, ModelCell, ModelRow, ModelValue, RowLink } from '../model.ts';

/** A cell that reaches over several columns, its text wrapped. */
export interface SpanningCell {
  readonly value: ModelValue;
  readonly style: string;
  /** Columns it covers. */
  readonly span: number;
  /** As in `ModelCell`. */
  readonly formula?: number;
  readonly link?: LinkTarget;
}

/** A cell that leads elsewhere. */
interface Leading extends ModelCell {
  readonly link: LinkTarget;
}

/** A cell that may be empty, or reach over several columns. */
export type Entry = ModelCell | Leading | SpanningCell | undefined;

/** What a row's height is worked out from: its entries, the text of each, and the width in characters that each has. */
export interface Written {
  readonly entries: readonly Entry[];
  readonly texts: readonly string[];
  readonly across: readonly number[];
}

export interface Layout {
  readonly rows: readonly ModelRow[];
  readonly merges: readonly Area[];
}

/** Rows one below the other in columns of these widths; merged cells follow from their entries. */
export function layOut(
  lines: readonly (readonly Entry[])[],
  widths: readonly number[],
  heightOfRow: (written: Written, index: number) => number,
): Layout {
  const merges: Area[] = [];
  const rows = lines.map((entries, index): ModelRow => {
    const row = index + 1;
    const cells: (ModelCell | undefined)[] = [];
    const texts: string[] = [];
    const across: number[] = [];
    const links: RowLink[] = [];
    for (const entry of entries) {
      const left = cells.length + 1;
      const span = entry && 'span' in entry ? entry.span : 1;
      const right = left + span - 1;
      if (entry !== undefined && 'link' in entry) links.push(...linkAt(left, entry.link));
      if (span > 1) merges.push({ top: row, left, bottom: row, right });
      const own = cellOf(entry);
      cells.push(own);
      // The look of a merged cell is that of all cells under it.
      for (let column = left; column < right; column++)
        cells.push(own && entry && { value: null, style: entry.style ?? 'text' });
      texts.push(typeof own?.value === 'string' ? own.value : '');
      // Each column has room for 5/7 of a character beside its width (ECMA-376 part 1, 18.3.1.13).
      across.push(widths.slice(left - 1, right).reduce((sum, width) => sum + width, ((span - 1) * 5) / 7));
    }
    const height = heightOfRow({ entries, texts, across }, index);
    return links.length === 0 ? { height, cells } : { height, cells, links };
  });
  return { rows, merges };
}

/** A cell that leads to a target where there is one, in the style of links then, `strong` → `strongLink`. */
export function leading(value: ModelValue, style: string, link: LinkTarget | undefined): Entry {
  const plain = cell(value, style);
  return plain && link ? { ...plain, style: `${style}Link`, link } : plain;
}

/** A wide entry without a text keeps its look: a line to write on. */
function cellOf(entry: Entry): ModelCell | undefined {
  if (entry === undefined || !('span' in entry)) return entry;
  const { value, style, formula } = entry;
  if (formula !== undefined) return { value, style, formula };
  return cell(value, style) ?? { value: null, style };
}

/** A text over columns of the page, from where it stands. */
export function wide(value: ModelValue, style: string, span: number, link?: LinkTarget): SpanningCell {
  return link ? { value, style, span, link } : { value, style, span };
}
