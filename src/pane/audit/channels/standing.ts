import type { ChannelResult } from '../../../audit/model/report.ts';
import { verdicts } from '../../../audit/model/threshold.ts';
import { verdictMarks, type Standing } from '../../../sheets/style/verdictMarks.ts';
import { verdictWords } from '../../../audit/model/wording.ts';

export type { Standing };

/** Worst first; the channels in bypass, which are counted apart, behind those that have a verdict. */
export const standings: readonly Standing[] = [...verdicts, 'in bypass'];

export const standingWords: Readonly<Record<Standing, string>> = {
  ...verdictWords,
  'in bypass': 'in bypass',
};

/** Signs that tell how channels stand without their colours. */
export function signOf(standing: Standing): string {
  return verdictMarks[standing].sign;
}

/** How a channel is counted: by its verdict now, or among those in bypass. */
export function standingOf({ inBypass, verdict }: ChannelResult): Standing {
  return inBypass === true ? 'in bypass' : verdict;
}

/** The class of the style sheet that gives a standing its colour. */
export function standingClass(standing: Standing): string {
  return `verdict-${standingName(standing)}`;
}

/** By what style sheets call a standing. */
export function standingName(standing: Standing): string {
  return standing === 'in bypass' ? 'bypass' : standing;
}
