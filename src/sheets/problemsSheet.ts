import type { Finding } from '../audit/model/findings.ts';
import { severities } from '../audit/model/severity.ts';
import type { Attention, Report } from '../audit/model/report.ts';
import { tagKey } from '../audit/read/tables/tagKey.ts';
import { cell } from './cells.ts';
import { heightOf } from './look/lines.ts';
import { footerOf, leftOut, roomFor } from './look/print.ts';
import { severityStyle } from './look/verdictStyles.ts';
import { frameStyles } from './look/styles.ts';
import { linkAt, sourceOf } from './links.ts';
import type { ModelRow, SheetModel } from './model.ts';
import { resultPlaces, type ResultPlaces } from './results/resultPlaces.ts';
import { sheetNames, tableNames, titleOf } from './titles.ts';

const headerRow = 3;
const headers = ['Severity', 'Tag', 'What was found', 'Sheet', 'Row', 'Column', 'Rule'] as const;
const [tagColumn, rowColumn] = [headers.indexOf('Tag') + 1, headers.indexOf('Row') + 1];
const centred = new Set<string>(['Row', 'Column']);
const widths = [11, 18, 100, 18, 8, 8, 28];
const wrapping = [0, 0, 100, 0, 0, 0, 28];

/** What stands on one line. */
type Line = Pick<Finding, 'severity' | 'message' | 'sheet' | 'row' | 'column'> & {
  readonly tag: string;
  readonly doNext: string;
  readonly rule: string;
  /** Its channel's index in the report. */
  readonly channel?: number | undefined;
};

/**
 * Every finding on a channel, every problem of the sheets, and what else needs action of no channel and no group (all that was
 * not read among it), worst first, with the cell it is about.
 */
export function problemsSheet(report: Report): SheetModel {
  const others = ofNoChannel(report);
  const total =
    others.length +
    report.problems.length +
    report.channels.reduce((sum, { findings }) => sum + findings.length, 0);
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
      if (total === 0) yield { cells: [cell('No finding and no problem.', 'subtitle')] };
      const places = resultPlaces(report);
      let left = shown;
      for (const line of listed(report, others)) {
        if (left-- <= 0) return;
        yield lineRow(line, places);
      }
    },
    freeze: { rows: headerRow, columns: 2 },
    table: {
      name: tableNames.problems,
      area: { top: headerRow, left: 1, bottom: lastRow, right: headers.length },
    },
    merges: [{ top: 2, left: 1, bottom: 2, right: headers.length }],
    print: { landscape: true, repeatRows: { from: headerRow, to: headerRow }, footer: footerOf(report) },
  };
}

/** What needs action of the workbook or of settings without a channel, and is no problem that stands on a line of its own. */
function ofNoChannel({ attention, channels }: Report): readonly Line[] {
  const listedTags = new Set(channels.map(({ tag }) => tagKey(tag)));
  const elsewhere = ({ group, tag }: Attention['subject']): boolean =>
    group !== null || (tag !== '' && listedTags.has(tagKey(tag)));
  const own = attention.filter(({ subject, code }) => code !== 'problem' && !elsewhere(subject));
  return own.map(({ subject, code, severity, headline, doNext, places: [place] }): Line => {
    const { sheet, row, column } = place ?? { sheet: '', row: 0, column: '' };
    return { severity, tag: subject.tag, message: headline, doNext, sheet, row, column, rule: code };
  });
}

/** Lines worst first; of equals what was not read, the channels in the report's order, then the rest. */
function* listed({ channels, problems }: Report, others: readonly Line[]): Generator<Line> {
  for (const severity of severities) {
    for (const line of others) if (line.severity === severity) yield line;
    for (const [channel, { tag, findings }] of channels.entries()) {
      for (const finding of findings) if (finding.severity === severity) yield lineOf(finding, tag, channel);
    }
    for (const problem of problems) if (problem.severity === severity) yield lineOf(problem, '', undefined);
  }
}

/** Of a fixed shape, which is quicker by the ten thousand than a finding spread out. */
function lineOf(
  { severity, message, sheet, row, column, rule }: Finding,
  tag: string,
  channel: number | undefined,
): Line {
  return { severity, tag, message, doNext: '', sheet, row, column, rule, channel };
}

function lineRow(line: Line, { ofChannel }: ResultPlaces): ModelRow {
  const { severity, tag, message, doNext, sheet, row, column, rule, channel } = line;
  const text = [message, doNext].filter((part) => part !== '').join(' ');
  return {
    height: heightOf(['', '', text, '', '', '', rule], wrapping),
    cells: [
      cell(severity, severityStyle(severity)),
      cell(tag, channel === undefined ? 'strong' : 'strongLink'),
      cell(text, 'wrapped'),
      cell(sheet, 'text'),
      cell(row > 0 ? row : null, 'countLink'),
      cell(column, 'centred'),
      cell(rule, 'wrapped'),
    ],
    links: [
      ...(channel === undefined ? [] : linkAt(tagColumn, ofChannel(channel))),
      ...(row > 0 ? linkAt(rowColumn, sourceOf(line)) : []),
    ],
  };
}
