import type { NotANumber } from '../../../cells/number.ts';
import type { NotADate } from '../../model/rules/cellRules.ts';

/** Why something is no number, as what a sentence says of it. */
export const notANumber: Readonly<Record<NotANumber, string>> = {
  'yes or no': 'is yes/no, not a number',
  date: 'is a date, not a number',
  'spreadsheet error': 'is a spreadsheet error',
  'no stored result': 'is a formula without a stored result',
  'decimal or thousands': 'may be a decimal comma or a thousands comma',
  'no number': 'is not a number',
  'too large': 'is too large for a number',
  'too long': 'is too long for a number',
};

/** Why something is no date, as what a sentence says of it. */
export const notADate: Readonly<Record<NotADate, string>> = {
  'no date': 'is not a date',
  'two different days': 'could be two different days',
  'no day of the calendar': 'is no day of the calendar',
};
