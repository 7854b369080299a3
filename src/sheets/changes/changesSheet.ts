import { capital } from '../../audit/model/wording.ts';
import type { Report } from '../../audit/model/report.ts';
import { changeWords, type Change, type SinceResult } from '../../audit/model/since.ts';
import { timeText } from '../auditedLine.ts';
import { cell } from '../cells.ts';
import { heightOf } from '../look/lines.ts';
import { footerOf, leftOut, roomFor } from '../look/print.ts';
import { decimalsFor } from '../look/significant.ts';
import { frameStyles, levelStyles } from '../look/styles.ts';
import type { ModelCell, ModelRow, SheetModel } from '../model.ts';
import { sheetNames, tableNames, titleOf } from '../titles.ts';
import { changeStyle } from './changeStyle.ts';
import { thresholdName } from '../../audit/model/threshold.ts';

const columns = [
  ['What', 18],
  ['Tag', 15],
  ['Machine', 18],
  ['Location', 16],
  ['Threshold or quantity', 17],
  ['Before', 10],
  ['Now', 10],
  ['Unit', 10],
  ['In words', 66],
] as const;
const numeric = new Set<string>(['Before', 'Now']);
const widths = columns.map(([, width]) => width);
const wrapping = columns.map(([header, width]) => (numeric.has(header) ? 0 : width));
/** Rows above the header: title, what is compared, caution. */
const headerRow = 4;

/** What changed since an earlier audit, worst first, one line a change; then what could not be compared. */
export function changesSheet(report: Report, since: SinceResult): SheetModel {
  const { changes, remarks } = since;
  const shown = roomFor(changes.length, headerRow + remarks.length + 2);
  const lastRow = headerRow + Math.max(shown, 1);
  const below = remarks.length > 0 ? remarks.length + 2 : 0;
  const across = (row: number) => ({ top: row, left: 1, bottom: row, right: columns.length });
  return {
    name: sheetNames.changes,
    widths,
    styles: { ...frameStyles, ...levelStyles },
    formulas: [],
    rowCount: lastRow + below,
    *rows() {
      yield { height: 24, cells: [cell(titleOf('changes', report), 'title')] };
      yield { cells: [cell(comparedWith(since), 'subtitle')] };
      yield { height: 45, cells: [cell(report.caution + leftOut(changes.length, shown), 'caution')] };
      yield {
        height: 30,
        cells: columns.map(([header]) => cell(header, numeric.has(header) ? 'headerCentred' : 'header')),
      };
      if (shown === 0) yield { cells: [cell('Nothing changed.', 'subtitle')] };
      for (const change of changes.slice(0, shown)) yield changeRow(change);
      if (below === 0) return;
      yield { cells: [] };
      yield { cells: [cell('Of the earlier results', 'strong')] };
      for (const { sheet, row, column, message } of remarks) {
        const text = sheet === '' ? message : `${sheet}, ${column}${row}: ${message}`;
        const height = heightOf([text], [widths.reduce((sum, width) => sum + width, 0)]);
        yield { height, cells: [cell(text, 'wrapped')] };
      }
    },
    freeze: { rows: headerRow, columns: 2 },
    table: {
      name: tableNames.changes,
      area: { top: headerRow, left: 1, bottom: lastRow, right: columns.length },
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

function changeRow(change: Change): ModelRow {
  const { kind, tag, machine, location, threshold, multiplier, quantity, before, now, unit, message } =
    change;
  const what = threshold
    ? capital(thresholdName({ name: threshold, multiplier: multiplier ?? 1 }))
    : capital(quantity ?? '');
  const decimals = decimalsFor(numberOf(now) ?? numberOf(before));
  const value = (of: number | string | null): ModelCell | undefined =>
    cell(of, typeof of !== 'number' ? 'centred' : unit === null ? 'factor' : `level${decimals}`);
  return {
    height: heightOf(
      [changeWords[kind], tag, machine, location, what, '', '', unit ?? '', message],
      wrapping,
    ),
    cells: [
      cell(changeWords[kind], changeStyle(kind)),
      cell(tag, 'wrapped'),
      cell(machine, 'wrapped'),
      cell(location, 'wrapped'),
      cell(what, 'wrapped'),
      value(before),
      value(now),
      cell(unit, 'wrapped'),
      cell(message, 'wrapped'),
    ],
  };
}

function numberOf(value: number | string | null): number | null {
  return typeof value === 'number' ? value : null;
}
