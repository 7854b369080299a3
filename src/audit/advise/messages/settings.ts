import type { FactOf } from '../../model/findings.ts';
import type { SettingsRules } from '../../model/rules/settingsRules.ts';
import { amount, percent, rounded } from '../../model/wording.ts';
import { unitSlipMessage } from './unitSlip.ts';

type Sentences = { readonly [K in keyof SettingsRules]: (fact: FactOf<K>) => string };

/** What is said of a channel's settings and readings. */
export const settingsMessages: Sentences = {
  'alert-not-below-danger': ({ values: { alert, danger, unit } }) =>
    `The alert of ${amount(alert, unit)} is not below the danger of ${amount(danger, unit)}: it gives no warning before the trip.`,
  'configured-far-from-rated': ({ values: { configured, rated, off, unit, kind } }) =>
    `The configured sensitivity of ${amount(configured, unit)} is ${percent(off)} off the rated ${amount(rated, unit)} of a ${kind} channel.`,
  'channel-in-bypass': () => 'The channel is in bypass: it trips nothing until the bypass is taken out.',
  'linear-range-short': ({ values: { span, covered, least, unit } }) =>
    `At the measured sensitivity the linear ${amount(span, 'V')} cover ${amount(covered, unit)}, less than the ${amount(least, unit)} of the policy.`,
  'calibration-in-the-future': ({ values: { calibratedOn, today } }) =>
    `The calibration date ${calibratedOn} lies after the day of this audit, ${today}. Check the entry.`,
  'calibration-overdue': ({ values: { calibratedOn, age, interval } }) =>
    `The calibration of ${calibratedOn} is ${rounded(age)} days old; the policy allows ${rounded(interval)}.`,
  'growth-given-twice': () =>
    'Growth per day and doubling time are both given; no times were worked out. Keep the one that fits.',
  'readings-point-to-a-cause': readings,
  'gap-voltage-hides-fault': readings,
  'unit-slip-suspected': ({ values }) => `${unitSlipMessage(values)}. Check the unit.`,
};

const hints = {
  'too much cable':
    'both are low in magnitude, consistent with too much cable in the chain. Check the extension cable length next',
  'too little cable':
    'both are high in magnitude, consistent with too little cable in the chain. Check the extension cable length next',
  'probe position':
    'the sensitivity is right and the gap is off, which points to the probe position. Check the mechanical gap next',
  'hidden by the gap voltage':
    'the gap voltage looks right while the sensitivity is off: the gap voltage hides the fault. The probe may have been moved to make it look right. Check cable and target first; a right gap voltage does not clear the channel',
  'no single cause': 'no single usual cause fits. Check the target material and every part of the chain',
} as const;

function readings({ values }: FactOf<'readings-point-to-a-cause' | 'gap-voltage-hides-fault'>): string {
  const { cause, measured, reference, off, unit, gapVoltage, referenceGapVoltage } = values;
  return (
    `Sensitivity ${amount(measured, unit)} against ${amount(reference, unit)} (${percent(off)}) and gap voltage ` +
    `${amount(gapVoltage, 'V')} against ${amount(referenceGapVoltage, 'V')}: ${hints[cause]}.`
  );
}
