import { verdicts } from '../../audit/model/threshold.ts';
import { type VerdictCounts } from '../../audit/model/report.ts';
import { headline } from '../summary/counts.ts';
import { lateAsLeftOf } from './actions.ts';
import type { FleetFile } from './types.ts';

/** The counts of all workbooks together. */
export function totalOf(files: readonly FleetFile[]): VerdictCounts {
  const total = {
    channels: 0,
    late: 0,
    early: 0,
    within: 0,
    undetermined: 0,
    unreachable: 0,
    incomplete: 0,
    groupsThatCannotTrip: 0,
  };
  for (const { found } of files) {
    if (!found) continue;
    for (const count of Object.keys(total) as (keyof VerdictCounts)[]) total[count] += found.summary[count];
  }
  return total;
}

/** How the whole fleet stands, in two sentences or three. */
export function fleetHeadline(files: readonly FleetFile[]): string {
  const refused = files.filter((file) => file.refused !== null).length;
  const workbooks = files.length === 1 ? '1 workbook' : `${files.length} workbooks`;
  const audited =
    refused === 0 ? `${workbooks} audited.` : `${refused} of ${workbooks} could not be audited: see below.`;
  return `${audited} ${headline(totalOf(files))}${lateAsLeftOf(files.flatMap(({ found }) => found ?? []))}`;
}

/** The worst that is true of a workbook or machine, in a word or two. */
export function worstWord(counts: VerdictCounts): string {
  if (counts.groupsThatCannotTrip > 0) return 'cannot trip';
  if (counts.channels === 0) return 'no channels';
  return verdicts.find((verdict) => counts[verdict] > 0) ?? 'within';
}
