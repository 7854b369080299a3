import type { AsFoundResult, ChannelResult } from '../../../audit/model/report.ts';
import type { SensitivityResult, ThresholdChange, ThresholdResult } from '../../../audit/model/threshold.ts';
import { verdictWords } from '../../../audit/model/verdictWords.ts';
import { amount, percent } from '../../../audit/model/wording.ts';
import { reallyText } from './thresholdText.ts';

/** Words of what became of a threshold since it was found. */
export const changeWords: Readonly<Record<ThresholdChange, string>> = {
  corrected: 'corrected',
  unchanged: 'unchanged',
  'not judged': 'not compared',
  'still unreachable': `still ${verdictWords.unreachable}`,
  'still late': `still ${verdictWords.late}`,
  'still undetermined': `still ${verdictWords.undetermined}`,
  'still early': `still ${verdictWords.early}`,
  'now unreachable': `now ${verdictWords.unreachable}`,
  'now late': `now ${verdictWords.late}`,
  'now undetermined': `now ${verdictWords.undetermined}`,
  'now early': `now ${verdictWords.early}`,
};

/** A sensitivity beside the configured one, and the gap voltage, in one line; `null` where none was measured. */
export function readingsText(
  { measured, configured, unit, error, uncertainty, from }: SensitivityResult,
  gapVoltage: number | null,
): string | null {
  if (measured === null) return null;
  const source = from === null || from === 'channel list' ? '' : ` by the ${from}`;
  const off =
    error === null || configured === null
      ? ''
      : `, ${percent(error)} off the configured ${amount(configured, '')}`;
  const band = uncertainty === null ? ', no uncertainty given' : `, uncertainty ${percent(uncertainty)}`;
  const gap = gapVoltage === null ? '' : `; gap voltage ${amount(gapVoltage, 'V')}`;
  return `Sensitivity ${amount(measured, unit ?? '')}${source}${off}${band}${gap}`;
}

/** What was found of a threshold that was judged again since, and what became of it; `null` where it was not. */
export function asFoundText(
  channel: ChannelResult,
  asFound: AsFoundResult | null,
  threshold: ThresholdResult,
): string | null {
  const found = asFound?.thresholds[channel.thresholds.indexOf(threshold)];
  if (!found || threshold.change === null) return null;
  return `As found: ${reallyText(channel, found)}; ${changeWords[threshold.change]}`;
}

/** How long a threshold that was found late or unable to act may have been so; `null` where it was not. */
export function exposureText(
  { exposure }: ChannelResult,
  { name, multiplier, verdict }: ThresholdResult,
): string | null {
  const own = exposure.find((one) => one.name === name && one.multiplier === multiplier);
  if (!own || (own.from === null && own.to === null && own.goesOn !== true)) return null;
  const { from, to, days, goesOn } = own;
  const since = from === null ? 'from a day not known' : `from ${from}`;
  const until = to === null ? '' : `, found on ${to}`;
  const long = days === null ? '' : `, up to ${days} days`;
  const ending = goesOn === true ? `; still ${verdictWords[verdict]} today` : '';
  return `May have been so ${since}${until}${long}${ending}`;
}
