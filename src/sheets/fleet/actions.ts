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

/** The worst of one workbook in a sentence. */
export function worstSentence({ summary, actions }: Found): string {
  const [worst] = actions;
  if (worst) return `${worst.name}, ${worst.threshold}: ${worst.sentence}`;
  if (summary.channels === 0) return 'Both tables were found, but the channel list names no channel.';
  if (summary.incomplete > 0) return 'Nothing is known about the channels that could not be audited in full.';
  return 'Every threshold acts where it was meant to, within the tolerance.';
}
