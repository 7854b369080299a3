import type { Attention, Report, ColumnReading, NotRead } from '../../audit/model/report.ts';
import { auditedLine } from '../auditedLine.ts';
import { evidenceLines } from '../evidence/evidenceLines.ts';
import type { SheetFingerprints } from '../evidence/resultsFingerprint.ts';
import { footerOf } from '../style/print.ts';
import type { LinkTarget, SheetModel } from '../model.ts';
import { groupPlaces } from '../groups/worstFirst.ts';
import { resultPlaces } from '../results/resultPlaces.ts';
import { sheetNames, titleOf } from '../titles.ts';
import { actionLines } from './actionLines.ts';
import { correctionLines } from './correctionLines.ts';
import { countLines, headline } from './counts.ts';
import {
  heading,
  lastColumn,
  layOut,
  rest,
  wide,
  widths,
  type Entry,
  summaryStyles,
  remark,
} from './layout.ts';
import { policyLines } from './policyLines.ts';
import { problemLines } from './problemLines.ts';
import { cell } from '../cells.ts';
import { leading } from '../style/layout.ts';
import { severityStyle } from '../style/verdictStyles.ts';
import { sourceOf } from '../links.ts';
import { placeText } from './actionEntry.ts';

const words =
  'Each looks like a part of this audit and was left out. Correct its header or say in the column map that it is no part of it; until then the audit is not complete.';

type Lines = readonly (readonly Entry[])[];

/**
 * The sheet to show around: how things stand, what to act on, what was not read, and what the audit went by. It is made of
 * `sheets`, which is asked for the fingerprints of all result sheets, its own included, when rows are made; a host that
 * writes this sheet last has them from writing the others, see `resultSheets`.
 */
export function summarySheet(report: Report): (sheets: () => SheetFingerprints) => SheetModel {
  const top: Lines = [
    [wide(titleOf('summary', report), 'title', lastColumn)],
    [wide(auditedLine(report), 'remark', lastColumn)],
    [],
    [wide(report.caution, 'caution', lastColumn)],
    [],
    [wide(headline(report.summary), 'headline', lastColumn)],
  ];
  const counts = countLines(report.summary);
  const [results, groups] = [resultPlaces(report), groupPlaces(report)];
  const lineOf = (one: Attention) => groups(one) ?? results.ofAttention(one);
  const action = [...actionLines(report, { lineOf, stepOf: results.stepOf }), ...notReadLines(report)];
  const before = [
    ...top,
    ...counts,
    ...action,
    ...correctionLines(report),
    ...problemLines(report),
    ...columnLines(report.columns),
    ...policyLines(report.policy),
  ];
  const { rows, merges } = layOut([...before, ...evidenceLines(report, {}), ...guideLines(report)]);
  return (sheets) => ({
    name: sheetNames.summary,
    widths,
    styles: summaryStyles,
    formulas: [],
    rowCount: rows.length,
    writtenLast: true,
    inFront: true,
    *rows() {
      yield* rows.slice(0, before.length);
      const evidence = layOut(evidenceLines(report, sheets())).rows;
      yield* evidence;
      yield* rows.slice(before.length + evidence.length);
    },
    merges,
    print: { landscape: true, footer: footerOf(report) },
  });
}

function guideLines(report: Report): Lines {
  return [
    heading('Beside this sheet'),
    ...guide(report).map(([name, words]): readonly Entry[] => [
      wide(name, 'strongLink', 2, { sheet: name, ours: true, row: 1, column: 'A' } satisfies LinkTarget),
      wide(words, 'wrapped', rest(2)),
    ]),
  ];
}

/** What each of the other sheets shows. */
function guide({
  since,
  summary,
  replay,
  runUps,
}: Report): readonly (readonly [name: string, words: string])[] {
  return [
    [
      sheetNames.results,
      'Every threshold as it is now, with its inputs and live formulas: change an input or the policy there to see what follows.',
    ],
    [sheetNames.groups, 'Every voting group: where its vote really acts now, and whether it can be reached.'],
    [
      sheetNames.problems,
      'Every finding, every problem of the rows and columns and all that was not read, worst first, with the cell to correct.',
    ],
    ...(summary.asLeft > 0
      ? ([
          [
            sheetNames['as found and as left'],
            'Channels measured again: where each threshold acted as found beside where it acts as left, and how long it may have been late.',
          ],
        ] as const)
      : []),
    ...(runUps
      ? ([
          [
            sheetNames['run-up'],
            'Run-ups: at which speed each alert and danger acts, and at which it should have, with a drawing.',
          ],
        ] as const)
      : []),
    ...(replay
      ? ([
          [
            sheetNames.replay,
            'Recorded readings: when each alert and danger acted, when it should have, and how late that was, with a drawing.',
          ],
        ] as const)
      : []),
    ...(since
      ? ([[sheetNames.changes, `What changed since ${since.before.input}, worst first.`]] as const)
      : []),
  ];
}

/** How each column was understood, for the reader to check before anything else is believed. */
function columnLines(columns: readonly ColumnReading[]): readonly (readonly Entry[])[] {
  return [
    heading('How the columns were understood'),
    [
      ...['Table', 'Sheet', 'Header row', 'Column'].map((text) => cell(text, 'header')),
      wide('Header as it stands', 'header', 4),
      cell('Understood as', 'header'),
      wide('Unit', 'header', 2),
    ],
    ...columns.map(({ table, sheet, headerRow, column, header, unit, meaning }): readonly Entry[] => [
      cell(table, 'text'),
      cell(sheet, 'wrapped'),
      cell(headerRow, 'countLeft'),
      leading(column, 'wrapped', { sheet, row: headerRow, column }),
      wide(header, 'wrapped', 4),
      cell(meaning, 'wrapped'),
      wide(unit, 'wrapped', 2),
    ]),
  ];
}

/** What looks like a part of the audit and was not read, in the order of the report; nothing where all was. */
function notReadLines({ notRead }: Report): readonly (readonly Entry[])[] {
  if (notRead.length === 0) return [];
  return [
    heading('Not read'),
    remark(words),
    [
      cell('What', 'header'),
      wide('Looks like', 'header', 2),
      cell('Severity', 'header'),
      wide('As it stands', 'header', 5),
      wide('Where', 'header', 2),
    ],
    ...notRead.map(line),
  ];
}

function line(one: NotRead): readonly Entry[] {
  return [
    cell(one.what, 'strong'),
    wide(one.looksLike, 'wrapped', 2),
    cell(one.severity, severityStyle(one.severity)),
    wide(one.text, 'wrapped', 5),
    wide(placeText(one), 'wrappedLink', rest(9), sourceOf(one)),
  ];
}
