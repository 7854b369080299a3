import { verdicts } from '../../audit/model/threshold.ts';
import { type Report, type VerdictCounts } from '../../audit/model/report.ts';
import { machinesOf } from '../machines.ts';
import type { FleetFile, MachineCounts } from './types.ts';

/** The channels of each machine by their verdict, worst machine first. */
export function machineCounts(report: Report): readonly MachineCounts[] {
  return machinesOf(report)
    .map(({ name, summary }): MachineCounts => ({ machine: name, ...summary }))
    .sort(worseFirst);
}

/** A machine and the workbook that lists it. */
export interface ListedMachine extends MachineCounts {
  readonly file: string;
}

/** The machines of all workbooks, worst first; machines of the same name in two workbooks are two. */
export function machinesOfAll(files: readonly FleetFile[]): readonly ListedMachine[] {
  return files
    .flatMap(({ file, found }) => (found?.machines ?? []).map((counts) => ({ file, ...counts })))
    .sort(worseFirst);
}

/** Whether all channels of a machine act within the tolerance, and all its groups can trip. */
export function isSound(counts: VerdictCounts): boolean {
  return counts.within === counts.channels && counts.groupsThatCannotTrip === 0;
}

/** More groups that cannot trip is worse; of equals more unreachable channels, then more late ones, and so on. */
function worseFirst(a: VerdictCounts, b: VerdictCounts): number {
  const difference = b.groupsThatCannotTrip - a.groupsThatCannotTrip;
  if (difference !== 0) return difference;
  for (const verdict of verdicts) {
    if (verdict !== 'within' && a[verdict] !== b[verdict]) return b[verdict] - a[verdict];
  }
  return 0;
}
