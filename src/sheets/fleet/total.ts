import { headline, type Counts } from '../summary/counts.ts';
import type { FleetFile } from './types.ts';

/** The counts of all workbooks together. */
export function totalOf(files: readonly FleetFile[]): Counts {
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
export function fleetHeadline(files: readonly FleetFile[]): string {
  const refused = files.filter((file) => file.refused !== null).length;
  const workbooks = files.length === 1 ? '1 workbook' : `${files.length} workbooks`;
  const audited =
    refused === 0 ? `${workbooks} audited.` : `${refused} of ${workbooks} could not be audited: see below.`;
  return `${audited} ${headline(totalOf(files), refused === 0)}`;
}
