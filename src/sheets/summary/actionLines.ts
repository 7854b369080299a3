import type { GroupResult, Report } from '../../audit/report/types.ts';
import { cell } from '../cells.ts';
import { tripWord } from '../groups/formulas.ts';
import { decimalsFor } from '../look/significant.ts';
import { sheetNames } from '../titles.ts';
import { heading, remark, type Entry } from './layout.ts';
import { needsAction, type Item } from './needsAction.ts';
import { groupSentence, thresholdSentence } from './sentence.ts';

const most = 25;

const headers = ['Tag or group', 'Machine', 'Location', 'Threshold', 'Verdict'] as const;

/** The worst thresholds and groups, one a line. */
export function actionLines(report: Report): readonly (readonly Entry[])[] {
  const { items, total } = needsAction(report, most);
  if (items.length === 0) return [heading('Needs action'), remark('Nothing, as far as could be audited.')];
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
    ...items.map(line),
    ...(more > 0
      ? [remark(`And ${more} more: see the sheets “${sheetNames.results}” and “${sheetNames.groups}”.`)]
      : []),
  ];
}

function line(item: Item): readonly Entry[] {
  if ('group' in item) {
    const { group } = item;
    const { name, voting, threshold, canTrip, intended, effective, unit } = group;
    return [
      cell(name, 'name'),
      cell(`group, ${voting}`, 'wrapped'),
      undefined,
      cell(threshold, 'text'),
      cell(canTrip ? trouble(group) : tripWord(threshold, canTrip), 'strong'),
      ...levels(intended, effective, unit),
      cell(groupSentence(group), 'wrapped'),
    ];
  }
  const { channel, threshold } = item;
  const { name, verdict, setpoint, multiplier, effective } = threshold;
  return [
    cell(channel.tag, 'name'),
    cell(channel.machine, 'wrapped'),
    cell(channel.location, 'wrapped'),
    cell(multiplier === 1 ? name : `${name} × ${multiplier}`, 'text'),
    cell(verdict, 'strong'),
    ...levels(setpoint === null ? null : multiplier * setpoint, effective, channel.unit),
    cell(thresholdSentence(channel, threshold), 'wrapped'),
  ];
}

function levels(set: number | null, acts: number | null, unit: string | null): readonly Entry[] {
  const style = `level${decimalsFor(set)}`;
  return [cell(set, style), cell(acts, style), cell(unit, 'centred')];
}

function trouble({ findings }: GroupResult): string {
  return findings.some((finding) => finding.rule === 'group-late') ? 'late' : 'beyond limit';
}
