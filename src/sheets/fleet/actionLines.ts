import { cell } from '../cells.ts';
import { levelHeaders, levels, subjectName, subjectThreshold } from '../summary/actionEntry.ts';
import { wide, type Entry } from '../summary/layout.ts';
import { codeWords } from './codeWords.ts';
import { pageHeading, pageRemark } from './page.ts';
import type { FleetFile, ReportDigest } from './types.ts';
import { byUrgency } from '../../audit/advise/attention.ts';
import type { Attention } from '../../audit/model/report.ts';
import { isClean } from '../summary/counts.ts';
import { usualActions } from './machines.ts';

/** What needs action, and the workbook in which it stands. */
interface ListedAction {
  readonly file: string;
  readonly entry: Attention;
}

/** What needs action in all workbooks, one a line, gravest first. */
export function actionLines(files: readonly FleetFile[]): readonly (readonly Entry[])[] {
  const { actions, total } = actionsOfAll(files);
  const more = total - actions.length;
  if (total === 0) {
    const all = files.every(({ refused }) => refused === null);
    return [
      pageHeading('Needs action'),
      pageRemark(all ? 'Nothing needs action.' : 'Nothing in the workbooks that were audited.'),
    ];
  }
  return [
    pageHeading('Needs action, worst first'),
    [
      ...['Workbook', 'What'].map((text) => cell(text, 'header')),
      wide('Tag or group', 'header', 2),
      wide('Machine', 'header', 2),
      wide('Threshold', 'header', 2),
      ...levelHeaders.map((text) => cell(text, 'headerCentred')),
      wide('What is wrong, and what to do', 'header', 2),
    ],
    ...actions.map(line),
    ...(more > 0
      ? [pageRemark(`And ${more} more: audit the workbooks one by one, or look into their copies.`)]
      : []),
  ];
}

function line({ file, entry }: ListedAction): readonly Entry[] {
  return [
    cell(file, 'name'),
    cell(codeWords[entry.code], 'strong'),
    wide(subjectName(entry), 'name', 2),
    wide(entry.subject.machine, 'wrapped', 2),
    wide(subjectThreshold(entry), 'wrapped', 2),
    ...levels(entry, null),
    wide(`${entry.headline} ${entry.doNext}`, 'wrapped', 2),
  ];
}

/** What needs action in all workbooks, gravest first, of equals as the files stand; how much there is in all. */
export function actionsOfAll(files: readonly FleetFile[]): {
  readonly actions: readonly ListedAction[];
  readonly total: number;
} {
  const all = files
    .flatMap(({ file, found }) => (found?.attention ?? []).map((entry): ListedAction => ({ file, entry })))
    .sort((one, other) => byUrgency(one.entry, other.entry));
  const lastCritical = all.findLastIndex(({ entry }) => entry.severity === 'critical');
  return {
    actions: all.slice(0, Math.max(usualActions, lastCritical + 1)),
    total: files.reduce((sum, { found }) => sum + (found ? actionsIn(found) : 0), 0),
  };
}

/** The worst of one workbook in a sentence. */
export function worstSentence({ summary, attention }: ReportDigest): string {
  const [worst] = attention;
  if (worst) return worst.headline;
  if (summary.channels === 0) return 'Both tables were found, but the channel list names no channel.';
  return isClean(summary) ? 'Nothing needs action.' : '';
}

function actionsIn({ summary }: ReportDigest): number {
  return summary.critical + summary.warnings;
}
