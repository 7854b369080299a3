import { footerOf } from '../style/print.ts';
import { groupShades, shadesFor, verdictShades, verdictWordShades } from '../style/shades.ts';
import type { SheetModel } from '../model.ts';
import { layOut, type Entry, summaryStyles, wide } from '../summary/layout.ts';
import { policyLines } from '../summary/policyLines.ts';
import { timeText } from '../auditedLine.ts';
import { sheetNames, titleOf } from '../titles.ts';
import { actionLines, actionsOfAll, worstSentence } from './actionLines.ts';
import { correctionLines } from './correctionLines.ts';
import { machineLines } from './machineLines.ts';
import { across, pageHeading, pageRemark, widths, countEntries, countHeaders } from './page.ts';
import type { Fleet, FleetFile } from './types.ts';
import { cell } from '../cells.ts';
import { worstWord } from './codeWords.ts';
import { headline, type Counts } from '../summary/counts.ts';

/** What the sheet says of a workbook that could not be audited. */
const notAudited = 'not audited';

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
  const judged = [
    ...fileLines(files),
    ...machineLines(files),
    ...actionLines(files),
    ...correctionLines(files),
  ];
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
  [notAudited]: { ...verdictShades.incomplete, bold: true },
} as const;

/** One line a workbook, as they were listed: its counts and the worst of it, or why it was not audited. */
function fileLines(files: readonly FleetFile[]): readonly (readonly Entry[])[] {
  const total = totalOf(files);
  const [gravest] = actionsOfAll(files).actions;
  return [
    pageHeading('Workbooks'),
    countHeaders('Workbook', 'The worst of it'),
    ...files.map(line),
    [
      cell('all workbooks', 'strong'),
      cell(worstWord(gravest?.entry ?? null, total), 'strong'),
      ...countEntries(total),
      cell('Each channel is counted once, by its worst threshold as it is now.', 'wrapped'),
    ],
  ];
}

function line({ file, found, refused }: FleetFile): readonly Entry[] {
  if (refused !== null)
    return [cell(file, 'name'), cell(notAudited, 'strong'), wide(refused, 'wrapped', widths.length - 2)];
  return [
    cell(file, 'name'),
    cell(worstWord(found.attention[0] ?? null, found.summary), 'strong'),
    ...countEntries(found.summary),
    cell(worstSentence(found), 'wrapped'),
  ];
}

/** The counts of all workbooks together. */
function totalOf(files: readonly FleetFile[]): Counts {
  const total: Record<keyof Counts, number> = {
    channels: 0,
    late: 0,
    early: 0,
    within: 0,
    undetermined: 0,
    unreachable: 0,
    incomplete: 0,
    inBypass: 0,
    groupsThatCannotTrip: 0,
    notRead: 0,
    critical: 0,
    warnings: 0,
  };
  for (const { found } of files) {
    if (!found) continue;
    for (const count of Object.keys(total) as (keyof Counts)[]) total[count] += found.summary[count];
  }
  return total;
}

/** How the whole fleet stands, in two sentences or more. */
function fleetHeadline(files: readonly FleetFile[]): string {
  const refused = files.filter((file) => file.refused !== null).length;
  const workbooks = files.length === 1 ? '1 workbook' : `${files.length} workbooks`;
  const audited =
    refused === 0 ? `${workbooks} audited.` : `${refused} of ${workbooks} could not be audited: see below.`;
  return `${audited} ${headline(totalOf(files), refused === 0)}`;
}
