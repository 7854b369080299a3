import type { Attributes } from '../read/branches.ts';
import type { Area } from '../../../cells/sheet.ts';
import { lastColumn, lastRow } from '../read/area.ts';
import { booleanAttribute } from '../read/xml.ts';
import { linkTo } from './links.ts';
import type { ViewColumns, ViewLink } from './types.ts';

/** Width in pixels of a digit of the usual font, 11 points at 96 dots an inch (ECMA-376 part 1, section 18.3.1.13). */
const digit = 7;

/** Digits a column shows where the sheet says nothing (ECMA-376 part 1, section 18.3.1.81). */
const usualDigits = 8;

/** What a worksheet part says around its rows; what it says wrongly counts as not said. */
export class SheetFrame {
  readonly columns: ViewColumns[] = [];
  readonly merges: Area[] = [];
  readonly links: ViewLink[] = [];
  frozen = { rows: 0, columns: 0 };
  showGridLines = true;
  defaultColumnWidth = digitsInPixels(usualDigits);
  defaultRowHeight = 15;
  #views = 0;

  /** An element outside the rows; `styleOf` reads a style's number. */
  hear(name: string, attributes: Attributes, styleOf: (stored: string | undefined) => number): void {
    if (name === 'sheetFormatPr') this.#defaults(attributes);
    else if (name === 'col') this.#column(attributes, styleOf);
    else if (name === 'sheetView') {
      this.#views++;
      if (this.#views === 1) this.showGridLines = booleanAttribute(attributes['showGridLines']) !== false;
    } else if (name === 'pane' && this.#views === 1) this.#freeze(attributes);
    else if (name === 'hyperlink') {
      const link = linkTo(attributes);
      if (link) this.links.push(link);
    }
  }

  #defaults({ defaultRowHeight, defaultColWidth, baseColWidth }: Attributes): void {
    const height = Number(defaultRowHeight);
    if (height > 0 && height < 410) this.defaultRowHeight = height;
    const width = Number(defaultColWidth);
    const digits = Number(baseColWidth);
    if (width > 0 && width < 256) this.defaultColumnWidth = widthInPixels(width);
    else if (digits > 0 && digits < 256) this.defaultColumnWidth = digitsInPixels(digits);
  }

  #column(attributes: Attributes, styleOf: (stored: string | undefined) => number): void {
    const first = Number(attributes['min']);
    const last = Math.min(Number(attributes['max']), lastColumn);
    if (!Number.isInteger(first) || !Number.isInteger(last) || first < 1 || last < first) return;
    const width = Number(attributes['width']);
    const style = styleOf(attributes['style']);
    const hidden = booleanAttribute(attributes['hidden']) === true || width === 0;
    this.columns.push({
      first,
      last,
      ...(width > 0 && width < 256 ? { width: widthInPixels(width) } : {}),
      ...(hidden ? { hidden } : {}),
      ...(style > 0 ? { style } : {}),
    });
  }

  #freeze({ state, xSplit, ySplit }: Attributes): void {
    if (state !== 'frozen' && state !== 'frozenSplit') return;
    const whole = (split: string | undefined, most: number): number => {
      const count = Number(split ?? 0);
      return Number.isInteger(count) && count > 0 && count < most ? count : 0;
    };
    this.frozen = { rows: whole(ySplit, lastRow), columns: whole(xSplit, lastColumn) };
  }
}

/** Pixels of a width as `col` elements store it, in digits with padding (ECMA-376 part 1, section 18.3.1.13). */
function widthInPixels(stored: number): number {
  return Math.trunc(((256 * stored + Math.trunc(128 / digit)) / 256) * digit);
}

/** Pixels of a width that is given in digits alone, without the padding of five pixels, rounded up to a multiple of 8 as programs do (common practice, no source). */
function digitsInPixels(digits: number): number {
  return Math.ceil((digits * digit + 5) / 8) * 8;
}
