import type { Cell } from '../../../cells/cell.ts';
import type { Sheet } from '../../../cells/sheet.ts';
import { defaultLimits } from '../zip/limits.ts';
import { FileRefused, oneLine } from '../zip/refused.ts';
import { cellBudget } from './cellBudget.ts';
import { separatorOf, type Separator } from './csvSeparator.ts';
import { baseName } from './fileName.ts';
import { interner } from './intern.ts';
import { cellAddress } from '../../../cells/address.ts';

/** A number with one mark, or with marks of both kinds, the last of which is the decimal mark. */
const marked = /^\s*[+-]?(?:\d{1,3}(?:([.,])\d{3})+)?\d*([.,])(\d+)(?:[eE][+-]?\d+)?\s*(?:%\s*)?$/;

const quote = '"';

/** Greatest text file read, in bytes; far more than a full sheet of numbers takes. */
const mostBytes = 2 ** 28;

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

/** The text of a file in UTF-8, or in UTF-16 with a byte order mark, without that mark. Throws FileRefused for anything else. */
function plainTextOf(bytes: Uint8Array): string {
  if (bytes.length === 0) throw new FileRefused('The file is empty. Copy or download it again.');
  if (bytes.length > mostBytes) throw new FileRefused('The text file is larger than 256 MB. Split it.');
  let text: string;
  try {
    text = new TextDecoder(encodingOf(bytes), { fatal: true }).decode(bytes);
  } catch {
    throw new FileRefused(
      'The file is not text in UTF-8, so its letters and signs would be guesses. Save it as “CSV UTF-8”.',
    );
  }
  if (text.includes('\0')) {
    throw new FileRefused(
      'The file is not plain text. Choose a .csv file, or save the table as “CSV UTF-8” or .xlsx.',
    );
  }
  return text;
}

function encodingOf([first, second]: Uint8Array): string {
  if (first === 0xff && second === 0xfe) return 'utf-16le';
  return first === 0xfe && second === 0xff ? 'utf-16be' : 'utf-8';
}

/**
 * The records of a separated text, each as its fields (RFC 4180, section 2). A field that begins with a quote
 * ends at the next single one; a doubled quote in it is one quote, and separators and line breaks in it are
 * text. Quotes elsewhere are text, so `5" pipe` needs none. Throws FileRefused where a quoted field never ends.
 */
export function* csvRecords(text: string, separator: string): Generator<string[]> {
  let at = 0;
  let record: string[] = [];
  let line = 1;
  while (at < text.length) {
    let field = '';
    if (text[at] === quote) {
      const end = closingQuote(text, at);
      if (end < 0) {
        throw new FileRefused(
          `The quote before “${oneLine(text.slice(at + 1, at + 40), 30)}” in row ${line} is never closed. Close it, or double every quote that is meant as an inch sign.`,
        );
      }
      field = text.slice(at + 1, end).replaceAll('""', quote);
      at = end + 1;
    }
    const start = at;
    while (at < text.length && text[at] !== separator && text[at] !== '\n' && text[at] !== '\r') at++;
    record.push(field + text.slice(start, at));
    if (text[at] === separator) {
      at++;
      if (at < text.length) continue;
      record.push('');
    } else if (text[at] === '\r' && text[at + 1] === '\n') at += 2;
    else at++;
    yield record;
    record = [];
    line++;
  }
}

/** Position of the quote that ends the field whose opening quote stands at `opening`; -1 where there is none. */
function closingQuote(text: string, opening: number): number {
  let at = text.indexOf(quote, opening + 1);
  while (at >= 0 && text[at + 1] === quote) at = text.indexOf(quote, at + 2);
  return at;
}

/**
 * The decimal mark of a table of texts. Where commas separate the fields it is the point. Else the mark that
 * most numbers have in a place where it cannot group thousands (`7.87`, `0,125`, `1.234,5`) decides; where none
 * has, a comma as in `7,874` counts as decimal between semicolons, which are written because of it, and throws
 * FileRefused between tabs, where it could as well be seven thousand, and so do both marks equally often.
 */
export function decimalMark(rows: readonly (readonly Cell[])[], separator: Separator): '.' | ',' {
  if (separator === ',') return '.';
  let points = 0;
  let commas = 0;
  let pointsInDoubt = 0;
  let doubtful: string | undefined;
  rows.forEach((row, index) => {
    row.forEach((cell, column) => {
      if (typeof cell !== 'string') return;
      const found = markOf(cell);
      if (found === undefined) return;
      if (found.certain && found.mark === ',') commas++;
      else if (found.certain) points++;
      else if (found.mark === '.') pointsInDoubt++;
      else doubtful ??= `${cellAddress(index + 1, column + 1)} (“${oneLine(cell, 20)}”)`;
    });
  });
  if (commas !== points) return commas > points ? ',' : '.';
  if (commas > 0) {
    throw new FileRefused(
      'As many numbers of the file have a decimal comma as have a decimal point. Write them all in one way.',
    );
  }
  if (doubtful === undefined) return '.';
  if (separator === ';' && pointsInDoubt === 0) return ',';
  throw new FileRefused(
    `Cell ${doubtful} has a comma that could be a decimal comma or group thousands. Write one number in the file so that it is clear, such as 7,8740 or 7.8740.`,
  );
}

function markOf(text: string): { mark: '.' | ','; certain: boolean } | undefined {
  const [, grouping, mark, decimals = ''] = marked.exec(text) ?? [];
  if (mark !== '.' && mark !== ',') return undefined;
  if (grouping !== undefined) return grouping === mark ? undefined : { mark, certain: true };
  const whole = text.trim().replace(/^[+-]/, '').split(mark)[0] ?? '';
  return {
    mark,
    certain: decimals.length !== 3 || whole === '' || whole.startsWith('0') || whole.length > 3,
  };
}
