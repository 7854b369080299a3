import type { Cell } from '../../../cells/cell.ts';
import type { Sheet } from '../../../cells/sheet.ts';
import { defaultLimits } from '../zip/limits.ts';
import { FileRefused } from '../zip/refused.ts';
import { cellBudget } from './cellBudget.ts';
import { decimalMark } from './csvDecimal.ts';
import { csvRecords } from './csvRecords.ts';
import { separatorOf } from './csvSeparator.ts';
import { baseName } from './fileName.ts';
import { interner } from './intern.ts';
import { plainTextOf } from './plainText.ts';

/**
 * Reads a table of plain text (RFC 4180, and what spreadsheets make of it): separated by comma, semicolon or
 * tab, lines ended by CR LF, LF or CR, in UTF-8 or, with a byte order mark, UTF-16. Every cell is a text exactly
 * as it stands, or empty; `plainText` says which decimal mark the numbers among them have. Row 1 is the first
 * line, or the one after a first line `sep=;`. Throws FileRefused for anything that is not such a text.
 */
export function readCsv(fileName: string, bytes: Uint8Array): Sheet {
  const { separator, body } = separatorOf(plainTextOf(bytes));
  const intern = interner();
  const spend = cellBudget(defaultLimits.cells);
  const rows: (readonly Cell[])[] = [];
  let filledRows = 0;
  for (const fields of csvRecords(body, separator)) {
    const row = fields.map((field) => (field === '' ? null : intern(field)));
    while (row.length > 0 && row.at(-1) === null) row.pop();
    spend(row.length + 1);
    rows.push(row);
    if (row.length > 0) filledRows = rows.length;
  }
  if (filledRows === 0)
    throw new FileRefused('The file holds no text. Save the table again, or choose another file.');
  rows.length = filledRows;
  return {
    name: baseName(fileName),
    hidden: false,
    rows,
    hiddenRows: new Set(),
    tables: [],
    plainText: { decimal: decimalMark(rows, separator) },
  };
}
