import { cell } from '../cells.ts';
import type { Entry } from '../summary/layout.ts';
import { worstWord } from './codeWords.ts';
import { machinesOfAll, type ListedMachine } from './machines.ts';
import { countEntries, countHeaders, pageHeading, pageRemark } from './page.ts';
import type { FleetFile } from './types.ts';

const most = 60;

/** The machines of all workbooks that need action, worst first, one a line; how many others there are. */
export function machineLines(files: readonly FleetFile[]): readonly (readonly Entry[])[] {
  const all = machinesOfAll(files);
  const troubled = all.filter((counts) => counts.gravest !== null);
  const sound = all.length - troubled.length;
  const more = troubled.length - most;
  const rest = [
    ...(more > 0 ? [`And ${more} more.`] : []),
    ...(sound > 0 ? [`${machines(sound)} of which nothing needs action.`] : []),
  ].join(' ');
  return [
    pageHeading('Machines, worst first'),
    ...(troubled.length > 0
      ? [countHeaders('Machine', 'Workbook'), ...troubled.slice(0, most).map(line)]
      : []),
    ...(rest === '' ? [] : [pageRemark(rest)]),
    ...(all.length === 0 ? [pageRemark('None was audited.')] : []),
  ];
}

function line(counts: ListedMachine): readonly Entry[] {
  return [
    cell(counts.machine || 'no machine named', 'name'),
    cell(worstWord(counts.gravest, counts), 'strong'),
    ...countEntries(counts),
    cell(counts.file, 'wrapped'),
  ];
}

function machines(count: number): string {
  return count === 1 ? '1 other machine' : `${count} other machines`;
}
