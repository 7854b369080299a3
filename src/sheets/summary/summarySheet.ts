import type { Report } from '../../audit/model/report.ts';
import { auditedLine } from '../auditedLine.ts';
import { evidenceLines } from '../evidence/evidenceLines.ts';
import type { SheetFingerprints } from '../evidence/resultsFingerprint.ts';
import { footerOf } from '../look/print.ts';
import { groupShades, shadesFor, verdictShades } from '../look/shades.ts';
import type { SheetModel } from '../model.ts';
import { sheetNames, titleOf } from '../titles.ts';
import { actionLines } from './actionLines.ts';
import { columnLines } from './columnLines.ts';
import { countLines, headline } from './counts.ts';
import { heading, lastColumn, layOut, wide, widths, type Entry } from './layout.ts';
import { notAuditedLines } from './notAudited.ts';
import { policyLines } from './policyLines.ts';
import { summaryStyles } from './styles.ts';

/**
 * The sheet to show around: how things stand, what to act on, what was left out, and what the audit went by. `sheets`:
 * fingerprints of all result sheets, its own included, see `resultSheetsInSteps`.
 */
export function summarySheet(report: Report, sheets: SheetFingerprints): SheetModel {
  const counts = countLines(report.summary);
  const top: readonly (readonly Entry[])[] = [
    [wide(titleOf('summary', report), 'title', lastColumn)],
    [wide(auditedLine(report), 'remark', lastColumn)],
    [],
    [wide(report.caution, 'caution', lastColumn)],
    [],
    [wide(headline(report.summary), 'headline', lastColumn)],
  ];
  const action = actionLines(report);
  const { rows, merges } = layOut([
    ...top,
    ...counts,
    ...action,
    ...notAuditedLines(report),
    ...columnLines(report.columns),
    ...policyLines(report.policy),
    ...evidenceLines(report, sheets),
    heading('Beside this sheet'),
    ...guide(report).map(([name, words]): readonly Entry[] => [
      wide(name, 'strong', 2),
      wide(words, 'wrapped', 7),
    ]),
  ]);
  const countsFrom = top.length + 1;
  const actionFrom = top.length + counts.length + 1;
  return {
    name: sheetNames.summary,
    widths,
    styles: summaryStyles,
    formulas: [],
    rowCount: rows.length,
    rows: () => rows,
    merges,
    shades: [
      ...shadesFor(
        { top: countsFrom, left: 1, bottom: countsFrom + counts.length - 1, right: 1 },
        verdictShades,
      ),
      ...shadesFor(
        { top: actionFrom, left: 5, bottom: actionFrom + action.length - 1, right: 5 },
        { ...verdictShades, ...groupShades, 'beyond limit': verdictShades.late },
      ),
    ],
    print: { landscape: true, footer: footerOf(report) },
  };
}

/** What each of the other sheets shows. */
function guide({ since, summary }: Report): readonly (readonly [name: string, words: string])[] {
  return [
    [
      sheetNames.results,
      'Every threshold with its inputs and live formulas: change an input or the policy there to see what follows.',
    ],
    [sheetNames.groups, 'Every voting group: where its vote really acts, and whether it can be reached.'],
    [
      sheetNames.problems,
      'Every finding and every problem of the rows and columns, worst first, with the cell to correct.',
    ],
    ...(summary.asLeft.judged > 0
      ? ([
          [
            sheetNames['as found and as left'],
            'Where each threshold acted as found and acts as left, what is still late first, and how long it may have been so.',
          ],
        ] as const)
      : []),
    ...(since
      ? ([[sheetNames.changes, `What changed since ${since.before.input}, worst first.`]] as const)
      : []),
  ];
}
