import { gravestFirst } from '../../audit/advise/attention.ts';
import type { Attention } from '../../audit/model/report.ts';
import { isClean } from '../summary/counts.ts';
import { usualActions } from './found.ts';
import type { FleetFile, Found } from './types.ts';

/** What needs action, and the workbook in which it stands. */
export interface ListedAction {
  readonly file: string;
  readonly entry: Attention;
}

/** What needs action in all workbooks, gravest first, of equals as the files stand; how much there is in all. */
export function actionsOfAll(files: readonly FleetFile[]): {
  readonly actions: readonly ListedAction[];
  readonly total: number;
} {
  const all = files
    .flatMap(({ file, found }) => (found?.attention ?? []).map((entry): ListedAction => ({ file, entry })))
    .sort((one, other) => gravestFirst(one.entry, other.entry));
  const lastCritical = all.findLastIndex(({ entry }) => entry.severity === 'critical');
  return {
    actions: all.slice(0, Math.max(usualActions, lastCritical + 1)),
    total: files.reduce((sum, { found }) => sum + (found ? actionsIn(found) : 0), 0),
  };
}

/** The worst of one workbook in a sentence. */
export function worstSentence({ summary, attention }: Found): string {
  const [worst] = attention;
  if (worst) return worst.headline;
  if (summary.channels === 0) return 'Both tables were found, but the channel list names no channel.';
  return isClean(summary) ? 'Nothing needs action.' : '';
}

function actionsIn({ summary }: Found): number {
  return summary.critical + summary.warnings;
}
