import type { FactOf } from '../../model/findings.ts';
import type { StillWrong, AsLeftRules } from '../../model/rules/asLeftRules.ts';
import { amount, percent, rounded, verdictWords } from '../../model/wording.ts';
import { subject } from './phrases.ts';

type Sentences = { readonly [K in keyof AsLeftRules]: (fact: FactOf<K>) => string };

/** What is said of thresholds as left, and of how long they were late. */
export const leftMessages: Sentences = {
  'as-left-sensitivity-missing': ({ values: { measured, unit } }) =>
    `The as-left sensitivity is missing; the one as found, ${amount(measured, unit)}, still counts. Enter it.`,
  'as-left-uncertainty-missing': ({ values: { uncertainty } }) =>
    `The as-left uncertainty is missing; that of the as-found reading (${percent(uncertainty)}) was used. Enter it.`,
  'as-left-gap-voltage-missing': ({ values: { gapVoltage } }) =>
    `The as-left gap voltage is missing; the one as found, ${amount(gapVoltage, 'V')}, was used. Enter it.`,
  'as-left-zero-not-measured': () =>
    'The zero voltage was not measured again, so it is not known where the position acts now. Enter the as-left zero voltage.',
  'as-left-cured': (fact) => `${acts(fact)}, within the tolerance. ${asFound(fact.values)}`,
  'as-left-worse': (fact) => {
    const { asFound: found, verdict, effective, unit } = fact.values;
    const verdicts = `${verdictWords[found.verdict]} as found, ${verdictWords[verdict]} as left`;
    const levels = `${amount(found.effective, unit)} and ${amount(effective, unit)}`;
    return `${subject(fact)} is worse as left than as found: ${verdicts}, at ${levels}. ${whatMoved(fact.values)}: find out what was changed.`;
  },
  'dates-out-of-order': ({ values: { lastGoodOn, lastGoodCell, calibratedOn, calibratedCell } }) =>
    `Last good on ${lastGoodOn} (cell ${lastGoodCell}) lies after calibrated on ${calibratedOn} (cell ${calibratedCell}). Check the entries.`,
  'exposure-start-unknown': ({ values: { thresholds, lastGoodOn, to, goesOn } }) => {
    const why =
      lastGoodOn === null
        ? 'no day is given on which the channel was last good'
        : 'the day given as last good is the very day on which it was found';
    return `How long the ${names(thresholds)} may have been late or unable to act is not known: ${why}. It was found on ${to}. ${ending(goesOn)} Enter the day on which it was last good before that.`;
  },
  'period-of-exposure': ({ values: { thresholds, from, to, days, goesOn } }) =>
    `For up to ${rounded(days)} days, from ${from} to ${to}, the ${names(thresholds)} may have been late or unable to act. ${ending(goesOn)}`,
};

function acts(fact: FactOf<'as-left-cured'>): string {
  return `${subject(fact)} acts at ${amount(fact.values.effective, fact.values.unit)} as left`;
}

function asFound({ asFound: found, unit }: Pick<AsLeftRules['as-left-cured'], 'asFound' | 'unit'>): string {
  return found.verdict === 'unreachable'
    ? 'As found it could not act.'
    : `As found it was ${verdictWords[found.verdict]}, at ${amount(found.effective, unit)}.`;
}

/** The sensitivity before and after; the gap voltage too where it was read both times. */
function whatMoved({ sensitivity, gapVoltage }: AsLeftRules['as-left-worse']): string {
  const { found, left, unit } = sensitivity;
  const moved = `The sensitivity went from ${amount(found, unit)} to ${amount(left, unit)}`;
  if (gapVoltage === null) return moved;
  return `${moved}, the gap voltage from ${amount(gapVoltage.found, 'V')} to ${amount(gapVoltage.left, 'V')}`;
}

function ending(goesOn: StillWrong): string {
  if (!goesOn) return 'It goes on until the chain is corrected and measured again.';
  const { sure, unsure } = goesOn;
  if (sure.length === 0 && unsure.length === 0) return 'The correction ended it.';
  return [
    sure.length > 0 ? `Still so as left: ${names(sure)}.` : '',
    unsure.length > 0 ? `Not known as left: ${names(unsure)}.` : '',
  ]
    .filter((part) => part !== '')
    .join(' ');
}

function names(thresholds: readonly string[]): string {
  return thresholds.join(' and ');
}
