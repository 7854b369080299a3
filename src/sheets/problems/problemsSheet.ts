import type { Finding } from '../../audit/model/findings.ts';
import { severities } from '../../audit/model/severity.ts';
import type { Report } from '../../audit/model/report.ts';
import { cell } from '../cells.ts';
import { heightOf } from '../look/lines.ts';
import { footerOf, leftOut, roomFor } from '../look/print.ts';
import { severityShades, shadesFor } from '../look/shades.ts';
import { frameStyles } from '../look/styles.ts';
import type { ModelRow, SheetModel } from '../model.ts';
import { sheetNames, titleOf } from '../titles.ts';

const headerRow = 3;
const headers = ['Severity', 'Tag', 'What was found', 'Sheet', 'Row', 'Column', 'Rule'] as const;
const centred = new Set<string>(['Row', 'Column']);
const widths = [11, 18, 100, 18, 8, 8, 28];
const wrapping = [0, 0, 100, 0, 0, 0, 28];

/** Every finding on a channel and every problem of the sheets, worst first, with the cell it is about. */
export function problemsSheet(report: Report): SheetModel {
  const total =
    report.problems.length + report.channels.reduce((sum, { findings }) => sum + findings.length, 0);
  const shown = roomFor(total, headerRow);
  const lastRow = headerRow + Math.max(shown, 1);
  return {
    name: sheetNames.problems,
    widths,
    styles: { ...frameStyles },
    formulas: [],
    rowCount: lastRow,
    *rows() {
      yield { height: 24, cells: [cell(titleOf('problems', report), 'title')] };
      yield { height: 45, cells: [cell(report.caution + leftOut(total, shown), 'caution')] };
      yield {
        height: 30,
        cells: headers.map((header) => cell(header, centred.has(header) ? 'headerCentred' : 'header')),
      };
      if (total === 0) yield { cells: [cell('Nothing to report.', 'subtitle')] };
      let left = shown;
      for (const [tag, problem] of listed(report)) {
        if (left-- <= 0) return;
        yield problemRow(tag, problem);
      }
    },
    freeze: { rows: headerRow, columns: 2 },
    filter: { top: headerRow, left: 1, bottom: lastRow, right: headers.length },
    merges: [{ top: 2, left: 1, bottom: 2, right: headers.length }],
    shades: shadesFor({ top: headerRow + 1, left: 1, bottom: lastRow, right: 1 }, severityShades),
    print: { landscape: true, repeatRows: { from: headerRow, to: headerRow }, footer: footerOf(report) },
  };
}

/** Problems with the tag they belong to, worst first; of equals the channels in the report's order, then the rest. */
function* listed({ channels, problems }: Report): Generator<readonly [tag: string, Problem]> {
  for (const severity of worstFirst) {
    for (const { tag, findings } of channels) {
      for (const finding of findings) if (finding.severity === severity) yield [tag, finding];
    }
    for (const problem of problems) if (problem.severity === severity) yield ['', problem];
  }
}

function problemRow(tag: string, { severity, message, sheet, row, column, rule }: Problem): ModelRow {
  return {
    height: heightOf(['', '', message, '', '', '', rule], wrapping),
    cells: [
      cell(severity, 'text'),
      cell(tag, 'strong'),
      cell(message, 'wrapped'),
      cell(sheet, 'text'),
      cell(row, 'count'),
      cell(column, 'centred'),
      cell(rule, 'wrapped'),
    ],
  };
}
