import { byUrgency } from '../../audit/advise/attention.ts';
import { verdicts } from '../../audit/model/threshold.ts';
import type { Report, VerdictCounts, Attention } from '../../audit/model/report.ts';
import { machinesOf } from '../machines.ts';
import type { FleetFile, MachineCounts, ReportDigest } from './types.ts';
import { correctionsOfAll } from '../../audit/advise/machineSentences.ts';

/** The counts of each machine, worst machine first. */
function machineCounts(report: Report): readonly MachineCounts[] {
  return machinesOf(report)
    .map(({ name, summary, attention: [gravest] }): MachineCounts => ({
      machine: name,
      gravest: gravest ? { severity: gravest.severity, code: gravest.code } : null,
      ...summary,
    }))
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

/** By the gravest that needs action; of equals more channels of the worse verdict first. */
function worseFirst(one: MachineCounts, other: MachineCounts): number {
  if (!one.gravest || !other.gravest) return Number(!one.gravest) - Number(!other.gravest);
  return byUrgency(one.gravest, other.gravest) || moreFirst(one, other);
}

function moreFirst(one: VerdictCounts, other: VerdictCounts): number {
  const difference = other.groupsThatCannotTrip - one.groupsThatCannotTrip;
  if (difference !== 0) return difference;
  for (const verdict of verdicts) {
    if (verdict !== 'within' && one[verdict] !== other[verdict]) return other[verdict] - one[verdict];
  }
  return 0;
}

/** Entries that are shown of all workbooks together where fewer are critical, and critical ones kept of one workbook. */
export const usualActions = 50;

const mostKept = 2_000;

/** What a fleet keeps of one report: light, however many channels it has. */
export function digestOf(report: Report): ReportDigest {
  const { summary, attention } = report;
  return {
    summary,
    machines: machineCounts(report),
    corrections: correctionsOfAll(report.machines).slice(0, usualActions),
    attention: keptOf(attention),
  };
}

/** All that is critical and what is graver than some of it, as far as 2,000; of the rest what fills the list up to 50. */
function keptOf(attention: readonly Attention[]): readonly Attention[] {
  const lastCritical = attention.findLastIndex(({ severity }) => severity === 'critical');
  return attention.slice(0, Math.max(usualActions, Math.min(lastCritical + 1, mostKept)));
}
