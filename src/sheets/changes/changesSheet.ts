import { capital } from '../../audit/model/wording.ts';
import type { Report } from '../../audit/model/report.ts';
import { changeWords, type Change, type SinceResult } from '../../audit/model/since.ts';
import { timeText } from '../auditedLine.ts';
import { cell } from '../cells.ts';
import { columnList } from '../column.ts';
import { heightOf } from '../style/lines.ts';
import { footerOf, leftOut, roomFor } from '../style/print.ts';
import { decimalsFor } from '../style/significant.ts';
import { frameStyles, levelStyles } from '../style/styles.ts';
import type { SheetModel } from '../model.ts';
import { sheetNames, tableNames, titleOf } from '../titles.ts';
import { changeStyle } from './changeStyle.ts';
import { thresholdName } from '../../audit/model/threshold.ts';

const list = columnList<Change>(
  [
    {
      id: 'what',
      header: 'What',
      width: 18,
      style: ({ kind }) => changeStyle(kind),
      headerStyle: 'header',
      wraps: true,
      value: ({ kind }) => changeWords[kind],
    },
    { id: 'tag', header: 'Tag', width: 15, style: 'wrapped', value: ({ tag }) => tag },
    { id: 'machine', header: 'Machine', width: 18, style: 'wrapped', value: ({ machine }) => machine },
    { id: 'location', header: 'Location', width: 16, style: 'wrapped', value: ({ location }) => location },
    { id: 'subject', header: 'Threshold or quantity', width: 17, style: 'wrapped', value: subjectOf },
    {
      id: 'before',
      header: 'Before',
      width: 10,
      style: (change) => amountStyle(change, change.before),
      value: ({ before }) => before,
    },
    {
      id: 'now',
      header: 'Now',
      width: 10,
      style: (change) => amountStyle(change, change.now),
      value: ({ now }) => now,
    },
    { id: 'unit', header: 'Unit', width: 10, style: 'wrapped', value: ({ unit }) => unit },
    { id: 'words', header: 'In words', width: 66, style: 'wrapped', value: ({ message }) => message },
  ],
  { headersAsCells: true },
);

/** Rows above the header: title, what is compared, caution. */
const headerRow = 4;

/** What changed since an earlier audit, worst first, one line a change; then what could not be compared. */
export function changesSheet(report: Report, since: SinceResult): SheetModel {
  const { changes, remarks } = since;
  const shown = roomFor(changes.length, headerRow + remarks.length + 2);
  const lastRow = headerRow + Math.max(shown, 1);
  const below = remarks.length > 0 ? remarks.length + 2 : 0;
  const across = (row: number) => ({ top: row, left: 1, bottom: row, right: list.columns.length });
  return {
    name: sheetNames.changes,
    widths: list.widths,
    styles: { ...frameStyles, ...levelStyles },
    formulas: [],
    rowCount: lastRow + below,
    *rows() {
      yield { height: 24, cells: [cell(titleOf('changes', report), 'title')] };
      yield { cells: [cell(comparedWith(since), 'subtitle')] };
      yield { height: 45, cells: [cell(report.caution + leftOut(changes.length, shown), 'caution')] };
      yield { height: 30, cells: list.headers };
      if (shown === 0) yield { cells: [cell('Nothing changed.', 'subtitle')] };
      for (const change of changes.slice(0, shown)) yield list.row(change);
      if (below === 0) return;
      yield { cells: [] };
      yield { cells: [cell('Of the earlier results', 'strong')] };
      for (const { sheet, row, column, message } of remarks) {
        const text = sheet === '' ? message : `${sheet}, ${column}${row}: ${message}`;
        const height = heightOf([text], [list.widths.reduce((sum, width) => sum + width, 0)]);
        yield { height, cells: [cell(text, 'wrapped')] };
      }
    },
    freeze: { rows: headerRow, columns: 2 },
    table: {
      name: tableNames.changes,
      area: { top: headerRow, left: 1, bottom: lastRow, right: list.columns.length },
    },
    merges: [across(3), ...remarks.map((_, index) => across(lastRow + 3 + index))],
    print: { landscape: true, repeatRows: { from: headerRow, to: headerRow }, footer: footerOf(report) },
  };
}

/** With which earlier audit this one is compared, as a sentence. */
function comparedWith({ before }: SinceResult): string {
  const { input, audited, channels } = before;
  const when =
    before.from === 'tables'
      ? ''
      : audited === null
        ? ', at a time it does not say'
        : `, audited ${timeText(audited)}`;
  return `Compared with ${input}, ${sourceText(before)}${when}: ${channels} channels. Levels are in the unit of this audit.`;
}

function sourceText({ from, sheet }: SinceResult['before']): string {
  if (from === 'tables') return 'audited anew from its own tables';
  return from === 'report' ? 'by its report' : `by its sheet “${sheet ?? ''}”`;
}

function subjectOf({ threshold, multiplier, quantity }: Change): string {
  return capital(
    threshold ? thresholdName({ name: threshold, multiplier: multiplier ?? 1 }) : (quantity ?? ''),
  );
}

/** The style of what was or is: levels with the decimals of both. */
function amountStyle({ before, now, unit }: Change, shown: number | string | null): string {
  if (typeof shown !== 'number') return 'centred';
  return unit === null ? 'factor' : `level${decimalsFor(numberOf(now) ?? numberOf(before))}`;
}

function numberOf(value: number | string | null): number | null {
  return typeof value === 'number' ? value : null;
}
