import type { AuditBasis } from '../audit/model/basis.ts';
import { isResultSheet, resultSheetMark } from '../audit/read/tables/titleWords.ts';
import type { Sheet, Workbook } from '../cells/sheet.ts';

/**
 * The workbook as the audit saw it: its cells as they are now; hidden rows, text tables and the result sheets of earlier
 * audits as they were then, since none of these is an edit of an input.
 */
export function restored(workbook: Workbook, input: string, basis: AuditBasis): Workbook {
  const own = workbook.sheets.filter((sheet) => !isResultSheet(sheet));
  const { textTables, hiddenSheets, hiddenRows, earlierResults } = basis;
  const texts = textSheets(own, textTables);
  const rowsHidden = new Map(Object.entries(hiddenRows));
  const sheets = own.map((sheet): Sheet => {
    const text = texts.get(sheet);
    const name = text?.sheet ?? sheet.name;
    const rows = rowsHidden.get(name);
    return {
      ...sheet,
      name,
      hidden: hiddenSheets.includes(name),
      hiddenRows: rows === undefined ? none : new Set(rowsOf(rows)),
      ...(text && { plainText: { decimal: text.decimal } }),
    };
  });
  return { name: input, sheets: [...sheets, ...earlierResults.map(earlier)] };
}

/**
 * The basis with the hidden rows of sheets where they stand now, on sheets where all of them moved by the same number of
 * rows, as they do when rows are inserted above; `undefined` where there is none.
 */
export function withMovedRows({ sheets }: Workbook, basis: AuditBasis): AuditBasis | undefined {
  const moved = Object.entries(basis.hiddenRows).flatMap(([name, then]): [string, string][] => {
    const now = sheets.find((sheet) => sheet.name === name)?.hiddenRows ?? none;
    const [before, after] = [[...rowsOf(then)], [...now].toSorted((one, other) => one - other)];
    const by = (after[0] ?? 0) - (before[0] ?? 0);
    const together =
      before.length === after.length && before.every((row, index) => row + by === after[index]);
    return together && by !== 0 ? [[name, after.join()]] : [];
  });
  if (moved.length === 0) return undefined;
  return { ...basis, hiddenRows: { ...basis.hiddenRows, ...Object.fromEntries(moved) } };
}

type TextTable = AuditBasis['textTables'][number];

/** Sheets that stand for text files: by name, without the ending where a workbook was made from them, or by their order. */
function textSheets(own: readonly Sheet[], tables: readonly TextTable[]): Map<Sheet, TextTable> {
  const found = new Map<Sheet, TextTable>();
  for (const [index, table] of tables.entries()) {
    const bare = table.sheet.replace(/\.[^.]*$/u, '');
    const named = own.find(({ name }) => name === table.sheet) ?? own.find(({ name }) => name === bare);
    const sheet = named ?? own[index];
    if (sheet && !found.has(sheet)) found.set(sheet, table);
  }
  return found;
}

const none: ReadonlySet<number> = new Set();

/** Rows of a sheet (common practice of spreadsheet programs, no source). */
const mostRows = 1_048_576;

/** `5-7,9` → 5, 6, 7, 9; no more than a sheet has rows. */
function* rowsOf(spans: string): Generator<number> {
  let left = mostRows;
  for (const [, from = '', to = from] of spans.matchAll(/(\d+)(?:-(\d+))?/gu))
    for (let row = Number(from); row <= Number(to); row++) {
      if (left-- === 0) return;
      yield row;
    }
}

function earlier(name: string): Sheet {
  return { name, hidden: false, rows: [[resultSheetMark]], hiddenRows: none, tables: [] };
}
