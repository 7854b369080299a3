import type { HistoryRowFault, HistoryRules } from '../../model/rules/historyRules.ts';
import { cellMessage } from './cells.ts';
import type { Sayings } from './sayings.ts';

/** What is said of histories of dated readings. */
export const historyMessages: Sayings<HistoryRules> = {
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
