import { cell } from '../cells.ts';
import { levels } from '../summary/actionLines.ts';
import { wide, type Entry } from '../summary/layout.ts';
import { actionsOfAll, type ListedAction } from './actions.ts';
import { pageHeading, pageRemark } from './page.ts';
import type { FleetFile } from './types.ts';

const headers = ['Workbook', 'Verdict', 'Tag or group', 'Machine', 'Location', 'Threshold'] as const;

/** The worst groups and thresholds of all workbooks, one a line. */
export function actionLines(files: readonly FleetFile[]): readonly (readonly Entry[])[] {
  const { actions, total } = actionsOfAll(files);
  const more = total - actions.length;
  if (total === 0) {
    return [pageHeading('Needs action'), pageRemark('Nothing, as far as could be audited.')];
  }
  return [
    pageHeading('Needs action, worst first'),
    [
      ...headers.map((header) => cell(header, 'header')),
      cell('Set at', 'headerRight'),
      cell('Acts at', 'headerRight'),
      cell('Unit', 'headerCentred'),
      wide('What happens', 'header', 2),
    ],
    ...actions.map(line),
    ...(more > 0
      ? [pageRemark(`And ${more} more: audit the workbooks one by one, or look into their copies.`)]
      : []),
  ];
}

function line(action: ListedAction): readonly Entry[] {
  return [
    cell(action.file, 'name'),
    cell(action.verdict, 'strong'),
    cell(action.name, 'name'),
    cell(action.machine, 'wrapped'),
    cell(action.location, 'wrapped'),
    cell(action.threshold, 'wrapped'),
    ...levels(action),
    wide(action.sentence, 'wrapped', 2),
  ];
}
