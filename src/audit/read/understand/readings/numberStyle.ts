import type { Sheet } from '../../../../cells/sheet.ts';
import type { NumberStyle } from './cellValue.ts';

const styles = new WeakMap<Sheet, NumberStyle>();
const decimal = /^[+\-−–]?\d+,(?:\d{1,2}|\d{4,})$/u;
/** Texts that have to show it: one can be a slip. */
const fewest = 3;
const point = /^[+\-−–]?\d*\.\d+$|^[+\-−–]?\d{1,3}(?:,\d{3}){2,}$|,\d{3}\./u;

/**
 * How the texts of a sheet write numbers. A comma is a decimal sign everywhere on it where several texts show that (`-9,8`) and
 * none shows the contrary (`9.8`, `1,234.5`).
 */
export function numberStyleOf(sheet: Sheet): NumberStyle {
  let style = styles.get(sheet);
  if (!style)
    styles.set(
      sheet,
      (style = {
        plainText: sheet.plainText,
        decimalComma: sheet.plainText === undefined && hasDecimalComma(sheet),
      }),
    );
  return style;
}

function hasDecimalComma(sheet: Sheet): boolean {
  let shown = 0;
  for (const cells of sheet.rows) {
    for (const cell of cells) {
      if (typeof cell !== 'string' || cell.length > 24) continue;
      const first = cell.charCodeAt(0);
      if (first > 57 && first < 8000) continue;
      const text = cell.trim();
      if (point.test(text)) return false;
      if (decimal.test(text)) shown++;
    }
  }
  return shown >= fewest;
}
