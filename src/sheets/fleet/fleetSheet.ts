import { palette, tones } from '../look/palette.ts';
import { footerOf } from '../look/print.ts';
import { groupShades, shadesFor, verdictShades, verdictWordShades } from '../look/shades.ts';
import type { SheetModel } from '../model.ts';
import { layOut, type Entry } from '../summary/layout.ts';
import { policyLines } from '../summary/policyLines.ts';
import { summaryStyles } from '../summary/styles.ts';
import { timeText } from '../auditedLine.ts';
import { sheetNames, titleOf } from '../titles.ts';
import { actionLines } from './actionLines.ts';
import { fileLines, notAudited } from './fileLines.ts';
import { machineLines } from './machineLines.ts';
import { across, pageHeading, pageRemark, widths } from './page.ts';
import { fleetHeadline } from './total.ts';
import type { Fleet } from './types.ts';

/** The sheet over many workbooks: how each stands, the machines and thresholds worst first, what was left out. */
export function fleetSheet(fleet: Fleet): SheetModel {
  const { folder, generated, version, policy, caution, files, leftOut } = fleet;
  const before: readonly (readonly Entry[])[] = [
    across(titleOf('fleet'), 'title'),
    across(`${folder} · audited ${timeText(generated)} · rules version ${version}`, 'remark'),
    [],
    across(caution, 'caution'),
    [],
    across(fleetHeadline(files), 'headline'),
  ];
  const judged = [...fileLines(files), ...machineLines(files), ...actionLines(files)];
  const { rows, merges } = layOut(
    [
      ...before,
      ...judged,
      ...(leftOut.length > 0 ? [pageHeading('Left out'), ...leftOut.map((text) => pageRemark(text))] : []),
      ...policyLines(policy, widths.length),
    ],
    widths,
  );
  return {
    name: sheetNames.fleet,
    widths,
    styles: summaryStyles,
    formulas: [],
    rowCount: rows.length,
    rows: () => rows,
    merges,
    shades: shadesFor(
      { top: before.length + 1, left: 2, bottom: before.length + judged.length, right: 2 },
      { ...verdictWordShades, ...groupShades, ...ownShades },
    ),
    print: { landscape: true, footer: footerOf() },
  };
}

const ownShades = {
  'past danger': groupShades['cannot trip'],
  'beyond limit': verdictShades.late,
  'may be beyond limit': verdictShades.undetermined,
  'group late': verdictShades.late,
  'past alert': verdictShades.undetermined,
  'not read': verdictShades.incomplete,
  'no channels': verdictShades.incomplete,
  [notAudited]: { fill: palette.grey, color: tones.ink, bold: true },
} as const;
