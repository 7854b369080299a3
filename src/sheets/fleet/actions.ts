import { lateAsLeft } from '../../audit/model/change.ts';
import { asLeftSentence } from '../summary/sentence.ts';
import { mostActions, worstActionFirst } from './found.ts';
import type { FleetFile, Found, RankedAction } from './types.ts';

/** What needs action, and the workbook in which it stands. */
export interface ListedAction extends RankedAction {
  readonly file: string;
}

/** The worst groups and thresholds of all workbooks, of equals as the files stand. */
export function actionsOfAll(files: readonly FleetFile[]): {
  readonly actions: readonly ListedAction[];
  readonly total: number;
} {
  const all = files.flatMap(({ file, found }) =>
    (found?.actions ?? []).map((action): ListedAction => ({ file, ...action })),
  );
  return {
    actions: all.sort(worstActionFirst).slice(0, mostActions),
    total: files.reduce((sum, { found }) => sum + (found?.actionsInAll ?? 0), 0),
  };
}

/** The worst of one workbook in a sentence, and in another what is late as left. */
export function worstSentence(found: Found): string {
  return worstAsFound(found) + lateAsLeftOf([found]);
}

/** How many channels are late, unreachable or undetermined as left, behind another sentence; nothing where none is. */
export function lateAsLeftOf(all: readonly Found[]): string {
  const count = all.reduce((sum, { summary }) => sum + lateAsLeft(summary.asLeft), 0);
  return count === 0 ? '' : ` ${asLeftSentence(count)}.`;
}

function worstAsFound({ summary, actions }: Found): string {
  const [worst] = actions;
  if (worst) return `${worst.name}, ${worst.threshold}: ${worst.sentence}`;
  if (summary.channels === 0) return 'Both tables were found, but the channel list names no channel.';
  if (summary.incomplete > 0) return 'Nothing is known about the channels that could not be audited in full.';
  return summary.asLeft.judged > 0
    ? 'Every threshold acted where it was meant to as found, within the tolerance.'
    : 'Every threshold acts where it was meant to, within the tolerance.';
}
