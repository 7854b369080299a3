import type { ChannelResult } from '../../../audit/model/report.ts';
import { verdicts, type ThresholdVerdict } from '../../../audit/model/threshold.ts';
import { verdictWords } from '../../../audit/model/wording.ts';

/** How a channel stands now: its verdict, or that it is in bypass and protects nothing. */
export type Standing = ThresholdVerdict | 'in bypass';

/** Worst first; the channels in bypass, which are counted apart, behind those that have a verdict. */
export const standings: readonly Standing[] = [...verdicts, 'in bypass'];

export const standingWords: Readonly<Record<Standing, string>> = {
  ...verdictWords,
  'in bypass': 'in bypass',
};

/** Signs that tell how channels stand without their colours. */
export const standingSigns: Readonly<Record<Standing, string>> = {
  unreachable: '✕',
  late: '▶',
  undetermined: '?',
  early: '◀',
  incomplete: '–',
  within: '✓',
  'in bypass': '⊘',
};

/** How a channel is counted: by its verdict now, or among those in bypass. */
export function standingOf({ inBypass, verdict }: ChannelResult): Standing {
  return inBypass === true ? 'in bypass' : verdict;
}

/** The class of the style sheet that gives a standing its colour. */
export function standingClass(standing: Standing): string {
  return `verdict-${standing === 'in bypass' ? 'bypass' : standing}`;
}
