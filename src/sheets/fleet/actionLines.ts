import { cell } from '../cells.ts';
import { levelHeaders, levels, subjectName, subjectThreshold } from '../summary/actionEntry.ts';
import { wide, type Entry } from '../summary/layout.ts';
import { actionsOfAll, type ListedAction } from './actions.ts';
import { codeWords } from './codeWords.ts';
import { pageHeading, pageRemark } from './page.ts';
import type { FleetFile } from './types.ts';

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
    ...levels(entry),
    wide(`${entry.headline} ${entry.doNext}`, 'wrapped', 2),
  ];
}
