import type { Report } from '../../audit/model/report.ts';
import { cell } from '../cells.ts';
import { decimalsFor } from '../look/significant.ts';
import { sheetNames } from '../titles.ts';
import { lateAsLeft } from '../../audit/model/change.ts';
import { actionOf, type Action } from './action.ts';
import { heading, remark, type Entry } from './layout.ts';
import { needsAction } from './needsAction.ts';
import { asLeftSentence } from './sentence.ts';

const most = 25;

const headers = ['Tag or group', 'Machine', 'Location', 'Threshold', 'Verdict'] as const;

/** The worst thresholds and groups, one a line. */
export function actionLines(report: Report): readonly (readonly Entry[])[] {
  const { items, total } = needsAction(report, most);
  const asLeft = asLeftLines(report.summary);
  if (items.length === 0) {
    const nothing =
      asLeft.length > 0
        ? 'Nothing as found, as far as could be audited.'
        : 'Nothing, as far as could be audited.';
    return [heading('Needs action'), remark(nothing), ...asLeft];
  }
  const more = total - items.length;
  return [
    heading('Needs action, worst first'),
    [
      ...headers.map((header) => cell(header, 'header')),
      cell('Set at', 'headerRight'),
      cell('Acts at', 'headerRight'),
      cell('Unit', 'headerCentred'),
      cell('What happens', 'header'),
    ],
    ...items.map((item) => line(actionOf(item))),
    ...(more > 0
      ? [remark(`And ${more} more: see the sheets “${sheetNames.results}” and “${sheetNames.groups}”.`)]
      : []),
    ...asLeft,
  ];
}

/** The lines above go by what was found; what is late as left stands on a sheet of its own. */
function asLeftLines({ asLeft }: Report['summary']): readonly (readonly Entry[])[] {
  const count = lateAsLeft(asLeft);
  if (count === 0) return [];
  return [remark(`${asLeftSentence(count)}: see the sheet “${sheetNames['as found and as left']}”.`)];
}

function line(action: Action): readonly Entry[] {
  return [
    cell(action.name, 'name'),
    cell(action.machine, 'wrapped'),
    cell(action.location, 'wrapped'),
    cell(action.threshold, 'text'),
    cell(action.verdict, 'strong'),
    ...levels(action),
    cell(action.sentence, 'wrapped'),
  ];
}

/** Where it is set, where it acts, and the unit of both. */
export function levels({ set, acts, unit }: Action): readonly Entry[] {
  const style = `level${decimalsFor(set)}`;
  return [cell(set, style), cell(acts, style), cell(unit, 'centred')];
}
