import { cellText, isBlank } from '../../../cells/cell.ts';
import { type Sheet, cellAt } from '../../../cells/sheet.ts';
import { headerKey } from '../tables/header.ts';
import { tagKey } from '../tables/tagKey.ts';
import { isProbeWord, isTagWord, labelledTag, longestTitle, namedTag } from '../tables/titleWords.ts';
import type { RecordHead } from './recordHeads.ts';
import { asFound, asLeft } from './recordCells.ts';

/** The tag above a block, nearest row first: a label with the tag beside or behind it, or a tag alone. */
export function tagAbove(
  head: RecordHead,
  heads: readonly RecordHead[],
  isTag: (key: string) => boolean,
): string | undefined {
  const { sheet } = head;
  let unknown: string | undefined;
  for (const row of titleRows(head)) {
    for (const column of columnsOf(head, heads)) {
      const text = cellText(cellAt(sheet, row, column));
      if (text === '' || text.length > longestTitle) continue;
      if (isTag(tagKey(text))) return text;
      const given = namedTag(text);
      if (given !== undefined) return given;
      const behind = labelledTag(text);
      if (behind !== undefined && isTag(tagKey(behind))) return behind;
      const beside = cellText(cellAt(sheet, row, column + 1));
      if (beside !== '' && isTagWord(text)) return beside;
      if (beside !== '' && isProbeWord(text)) {
        if (isTag(tagKey(beside))) return beside;
        unknown ??= beside;
      } else if (row === head.row - 1 && behind !== undefined) unknown ??= behind;
    }
  }
  return unknown;
}

/** The series of records whose rows name none: from the title above, or the sheet's name; as found where neither says. */
export function titleSeries(head: RecordHead, heads: readonly RecordHead[]): string {
  const { sheet } = head;
  for (const row of titleRows(head)) {
    const cells = (sheet.rows[row - 1] ?? []).filter((cell) => !isBlank(cell));
    const texts = columnsOf(head, heads).map((column) => cellAt(sheet, row, column));
    // A title alone in its row stands over all that is below it.
    for (const cell of cells.length === 1 ? cells : texts) {
      const series = seriesIn(cellText(cell).slice(0, longestTitle));
      if (series) return series;
    }
  }
  return seriesIn(sheet.name) ?? asFound;
}

function seriesIn(text: string): string | undefined {
  const key = headerKey(text);
  const [left, found] = [key.includes('asleft'), key.includes('asfound')];
  return left === found ? undefined : left ? asLeft : asFound;
}

/** The rows above a head, nearest first, up to the points of another record. */
function titleRows(head: RecordHead): number[] {
  const { sheet, row, titlesFrom } = head;
  const rows: number[] = [];
  for (let above = row - 1; above >= titlesFrom; above--) {
    if (isPoint(sheet, above, head)) break;
    rows.push(above);
  }
  return rows;
}

/** Whether a row holds readings, of this record or of one with other columns, and so no title. */
function isPoint(sheet: Sheet, row: number, { left, right }: RecordHead): boolean {
  const cells = sheet.rows[row - 1]?.slice(left - 1, right) ?? [];
  return cells.filter((cell) => typeof cell === 'number').length >= 2;
}

/** Its own columns, then the one before and the one behind, where they belong to no table beside it. */
function columnsOf({ row, left, right }: RecordHead, heads: readonly RecordHead[]): number[] {
  const own = Array.from({ length: right - left + 1 }, (_, at) => left + at);
  const free = [left - 1, right + 1].filter(
    (column) =>
      column > 0 && !heads.some((head) => head.row === row && column >= head.left && column <= head.right),
  );
  return [...own, ...free];
}
