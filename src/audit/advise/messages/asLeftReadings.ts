import type { AsLeftReadingRules } from '../../model/rules/asLeftReadingRules.ts';
import { amount } from '../../model/wording.ts';
import type { Sayings } from './sayings.ts';

/** What is said of the readings of a channel as it was left. */
export const asLeftReadingMessages: Sayings<AsLeftReadingRules> = {
  'as-left-not-judged': ({ values }) => notJudged(values.why),
  'record-as-left-of-another-day': ({ values: { sheet, row, takenOn, lies } }) => {
    const why =
      lies.kind === 'after the audit'
        ? `lies after the day of this audit, ${lies.today}`
        : `lies before what was found on ${lies.found}, so it can’t be how that was left`;
    return `The record marked as left in row ${row} of sheet '${sheet}' is of ${takenOn}, which ${why}: it was not used as left. Check the dates.`;
  },
  'as-left-sensitivity-from-record': ({ values: { sheet, row, value, unit, takenOn } }) => {
    const day =
      takenOn === null
        ? '; it names no day: make sure that it was taken after what was found'
        : `; it was taken on ${takenOn}`;
    return `The channel list has no as-left sensitivity; the average of the calibration record marked as left in row ${row} of sheet '${sheet}', ${amount(value, unit)}, was used${day}.`;
  },
};

function notJudged(why: AsLeftReadingRules['as-left-not-judged']['why']): string {
  switch (why) {
    case 'found unusable':
      return 'The as-left readings were not judged, because what was found can’t be audited. Complete the row first.';
    case 'value unusable':
      return unknownSince('a value among them can’t be used');
    case 'no sensitivity':
      return unknownSince('no sensitivity was read as left');
  }
}

function unknownSince(why: string): string {
  return `The as-left readings were not judged: ${why}, so where the thresholds act since the correction is not known. Enter the as-left sensitivity with its unit.`;
}
