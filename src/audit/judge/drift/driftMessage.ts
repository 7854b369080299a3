import type { Policy } from '../../model/policy.ts';
import type { DriftForecast, DriftResult } from '../../model/drift.ts';
import { amount, percent, rounded } from '../../model/wording.ts';
import type { TooFew } from './driftLine.ts';

/** How a channel drifts and when it leaves the tolerance, for people; `due` is the next calibration's day. */
export function driftMessage(drift: DriftResult, policy: Policy, due: string | null): string {
  const { unit, perYear, perYearFraction, expandedUncertainty, readings } = drift;
  const counted = readings.filter(({ counts }) => counts);
  const [first, last] = [counted[0]?.date ?? '', counted.at(-1)?.date ?? ''];
  const told =
    Math.abs(perYear) > expandedUncertainty ? '' : ', which these readings can’t tell from their scatter';
  return [
    `By ${counted.length} readings from ${first} to ${last} the sensitivity drifts by ${amount(perYear, unit)} a year (${percent(perYearFraction)} of the configured, ± ${amount(expandedUncertainty, unit)} at a level of 95.45 %)${told}.`,
    correction(drift),
    leaving(drift.leaves, unit, policy.tolerance),
    due === null
      ? ''
      : `The next calibration is due only on ${due}, ${rounded(policy.calibrationIntervalDays)} days after the last reading: measure it earlier, and find out why it drifts.`,
  ]
    .filter((sentence) => sentence !== '')
    .join(' ');
}

/** Why no drift was worked out, for people. */
export function tooFewMessage({ readings, days, since }: TooFew): string {
  const those = `${readings} ${readings === 1 ? 'reading' : 'readings'} on ${days} ${days === 1 ? 'day' : 'days'}`;
  const after = since === null ? '' : ` since the correction of ${since}`;
  return `No drift was worked out: it takes at least three readings on three days, and there ${readings === 1 ? 'is' : 'are'} ${those}${after}.`;
}

function correction({ startsAnew, unit }: DriftResult): string {
  if (!startsAnew) return '';
  const { date, found, left } = startsAnew;
  return `Readings from before do not count: on ${date} the chain was corrected, from ${amount(found, unit)} to ${amount(left, unit)}.`;
}

function leaving(
  { state, limit, on, earliest, latest }: DriftForecast,
  unit: string,
  tolerance: number,
): string {
  const band = `the tolerance of ±${percent(tolerance)}`;
  if (limit === null) {
    return state === 'inside'
      ? ''
      : `The line through them lies outside ${band} and does not run further out of it.`;
  }
  const edge = `${band} at ${amount(limit, unit)}`;
  if (on === null) {
    return state === 'inside' ? '' : `The line through them has been outside ${band} all along.`;
  }
  const start =
    state === 'inside'
      ? `At this rate it leaves ${edge} on ${on}`
      : `By the line through them it left ${edge} on ${on}`;
  return `${start} (${span(earliest, latest)}).`;
}

function span(earliest: string | null, latest: string | null): string {
  if (earliest === null)
    return `it may be outside already${latest === null ? ', or may never be' : `, and is by ${latest}`}`;
  return latest === null ? `not before ${earliest}, and it may never` : `between ${earliest} and ${latest}`;
}
