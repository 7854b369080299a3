import type { HistoryRowFault, HistoryRules, Drift, DriftRules } from '../../model/rules/historyRules.ts';
import { cellMessage } from './values.ts';
import type { MessagesOf } from './phrases.ts';
import type { FactOf } from '../../model/findings.ts';
import { amount, percent, rounded } from '../../model/wording.ts';

type Sentences = { readonly [K in keyof DriftRules]: (fact: FactOf<K>) => string };

/** What is said of a channel's readings over the years. */
export const driftMessages: Sentences = {
  'history-has-newer-reading': ({ values: { sensitivity, on, off, measured, calibratedOn, unit } }) =>
    `The history has a newer reading: ${amount(sensitivity, unit)} on ${on}, ${percent(off)} off the configured sensitivity. The channel was judged by the ${amount(measured, unit)} of ${calibratedOn}, so its verdict may be out of date. Enter the newer reading in the channel list and audit again.`,
  'drift-not-told': ({ values: { readings, days, since } }) => {
    const those = `${readings} ${readings === 1 ? 'reading' : 'readings'} on ${days} ${days === 1 ? 'day' : 'days'}`;
    const after = since === null ? '' : ` since the correction of ${since}`;
    return `No drift was worked out: that takes three readings on three days; there ${readings === 1 ? 'is' : 'are'} ${those}${after}.`;
  },
  'drift-of-sensitivity': ({ values }) => drifts(values),
  'drift-leaves-tolerance': ({ values }) =>
    values.kind === 'unseen by the last reading'
      ? `${drifts(values)} The last reading was still within it: measure the chain now, and find out why it drifts.`
      : `${drifts(values)} The next calibration is due only on ${values.due}, ${rounded(values.interval)} days after the last reading: measure it earlier, and find out why it drifts.`,
};

/** What is said of histories of dated readings. */
export const historyMessages: MessagesOf<HistoryRules> = {
  'history-row-left-out': ({ values }) => leftOut(values),
  'history-without-channel': ({ values: { tag, count } }) =>
    `${count === 1 ? 'A reading' : `${count} readings`} of '${tag.slice(0, 60)}' in the history belong to no channel of the channel list, so no drift was worked out. Correct the tag, or add the channel.`,
};

function leftOut(fault: HistoryRowFault): string {
  switch (fault.kind) {
    case 'no tag':
      return reading(`Row ${fault.row} has a reading but no tag, so it belongs to no channel: enter it`);
    case 'no date':
      return reading(`Row ${fault.row} has no date: enter it`);
    case 'no sensitivity':
      return reading(`Row ${fault.row} has no sensitivity: enter it`);
    case 'after the audit':
      return reading(
        `The date ${fault.day} lies after the day of this audit, ${fault.today}: check the entry`,
      );
    case 'no unit':
      return reading(
        `'${fault.header}' names no unit: write it in brackets in the header, such as (mV/mil), or in a unit column`,
      );
    case 'not above 0':
      return reading(
        `'${fault.header}': ${fault.value} ${fault.unit} is outside its physical range: it must be above 0`,
      );
    case 'unit does not fit':
      return `The reading of ${fault.value} ${fault.unit} in the history can't be compared with the channel's sensitivities in ${fault.wanted}: correct the unit; this reading of the history was left out.`;
    case 'uncertainty':
      return `The uncertainty ${fault.value} can't be one of this reading: it must be above 0 and below 100 %. The uncertainty was left out.`;
    case 'cell': {
      const what = fault.leftOut === 'uncertainty' ? 'The uncertainty' : 'This reading of the history';
      return `${cellMessage(fault.fault)} ${what} was left out.`;
    }
  }
}

function reading(why: string): string {
  return `${why}; this reading of the history was left out.`;
}

/** How a channel drifts and when it leaves the tolerance. */
function drifts(drift: Drift): string {
  const { unit, perYear, perYearFraction, expandedUncertainty, readings, from, to } = drift;
  const told =
    Math.abs(perYear) > expandedUncertainty ? '' : ', which these readings can’t tell from their scatter';
  return [
    `By ${readings} readings from ${from} to ${to} the sensitivity drifts by ${amount(perYear, unit)} a year (${percent(perYearFraction)} of the configured, ± ${amount(expandedUncertainty, unit)} at a level of 95.45 %)${told}.`,
    correction(drift),
    leaving(drift),
  ]
    .filter((sentence) => sentence !== '')
    .join(' ');
}

function correction({ startsAnew, unit }: Drift): string {
  if (!startsAnew) return '';
  const { date, found, left } = startsAnew;
  return `Readings from before do not count: on ${date} the chain was corrected, from ${amount(found, unit)} to ${amount(left, unit)}.`;
}

function leaving({ leaves: { state, limit, on, earliest, latest }, unit, tolerance }: Drift): string {
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
