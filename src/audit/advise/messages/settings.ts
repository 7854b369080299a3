import type { FactOf } from '../../model/findings.ts';
import type { SettingsRules, UnitSlip } from '../../model/rules/settingsRules.ts';
import { amount, percent, rounded } from '../../model/wording.ts';
import { lengthSentence } from './chainLength.ts';

const peerSlips = {
  2: 'one may be peak-to-peak and the other zero-to-peak',
  25.4: 'one may be in µm and the other in mil',
} as const;

const ratedSlips = {
  25.4: 'it may be per µm where per mil is meant, or the other way',
  1000: 'it may be in V where mV is meant, or the other way',
} as const;

type Sentences = { readonly [K in keyof SettingsRules]: (fact: FactOf<K>) => string };

/** What is said of a channel's settings and readings. */
export const settingsMessages: Sentences = {
  'alert-not-below-danger': ({ values: { alert, danger, unit } }) =>
    `The alert of ${amount(alert, unit)} is not below the danger of ${amount(danger, unit)}: it gives no warning before the trip.`,
  'configured-far-from-rated': ({ values: { configured, rated, off, unit, kind } }) =>
    `The configured sensitivity of ${amount(configured, unit)} is ${percent(Math.abs(off))} ${off < 0 ? 'below' : 'above'} the rated ${amount(rated, unit)} of a ${kind} channel.`,
  'monitor-gain-off': ({ values: { gain, off, tolerance } }) =>
    `The monitor shows ${percent(Math.abs(off))} too ${off < 0 ? 'little' : 'much'} of what is injected (gain ${rounded(gain)}), more than the tolerance of ${percent(tolerance)}. Every setpoint of the channel acts ${off < 0 ? 'late' : 'early'} by it. Repair or set the monitor, and inject again.`,
  'runout-large': ({ values }) => {
    const { runout, part, effective, real, least, most, unit } = values;
    const size = `The runout is really ${amount(runout, unit)}, ${rounded(100 * part)} % of the danger`;
    if (least === null || most === null)
      return `${size}, and reaches it by itself. Danger on uncompensated values acts at slow roll. Correct the target first.`;
    const now = real === null ? '' : `, ${amount(real, unit)} at the present angle`;
    return `${size}. Where danger acts on the uncompensated value (${amount(effective, unit)}) the shaft really moves ${amount(least, unit)} to ${amount(most, unit)} by the angle of the runout${now}. Of the 1X component alone; overall values cannot be compensated.`;
  },
  'channel-in-bypass': () => 'The channel is in bypass: it trips nothing until the bypass is taken out.',
  'linear-range-short': ({ values: { span, covered, least, unit } }) =>
    `At the measured sensitivity the linear ${amount(span, 'V')} cover ${amount(covered, unit)}, less than the ${amount(least, unit)} of the policy.`,
  'calibration-in-the-future': ({ values: { calibratedOn, today } }) =>
    `The calibration date ${calibratedOn} lies after the day of this audit, ${today}. Check the entry.`,
  'calibration-overdue': ({ values: { calibratedOn, age, interval } }) =>
    `The calibration of ${calibratedOn} is ${rounded(age)} days old; the policy allows ${rounded(interval)}.`,
  'growth-given-twice': () =>
    'Growth per day and doubling time are both given; no times were worked out. Keep the one that fits.',
  'reading-above-full-scale': ({ values: { reading, fullScale, unit } }) =>
    `The panel reading of ${amount(reading, unit)} is above the full scale of ${amount(fullScale, unit)}, which no panel can show. Correct the reading, its unit or the full scale.`,
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
    `${amount(gapVoltage, 'V')} against ${amount(referenceGapVoltage, 'V')}: ${hints[cause]}.` +
    (values.length === null ? '' : ` ${lengthSentence(values.length)}`)
  );
}

const uncertaintiesOf = {
  sensitivity: 'An uncertainty',
  'monitor gain': 'A monitor gain uncertainty',
  batch: 'A shared uncertainty',
} as const;

/** What looks like a slip of units, and which one, as a sentence without its end. */
function unitSlipMessage(slip: UnitSlip): string {
  switch (slip.kind) {
    case 'sensitivities':
      return `The measured and the configured sensitivity differ by a factor of ${rounded(slip.ratio)}, about the 25.4 µm of a mil`;
    case 'detection of a sensitivity':
      return `The measured sensitivity of ${amount(slip.measured, slip.unit)} is ${rounded(slip.ratio)} times the configured ${amount(slip.configured, slip.unit)}: one may be peak-to-peak and the other zero-to-peak`;
    case 'rated sensitivity':
      return `The ${slip.which} sensitivity of ${amount(slip.value, slip.unit)} is about ${slip.factor} times off the rated ${amount(slip.rated, slip.unit)}: ${ratedSlips[slip.factor]}`;
    case 'setpoint':
      return `Danger ${amount(slip.danger, slip.unit)} ${against(slip)}: one may be in µm and the other in mil`;
    case 'size of a setpoint': {
      const other = slip.is === 'too small' ? 'mil written into a µm column' : 'µm written into a mil column';
      return `Danger ${amount(slip.danger, slip.unit)} is out of the ordinary for shaft vibration: it may be ${other}`;
    }
    case 'speed':
      return `A speed of ${amount(slip.speed, 'r/min')} is very slow for a shaft with displacement probes: it may be in thousands, or per second`;
    case 'uncertainty':
      return `${uncertaintiesOf[slip.of]} of ${rounded(100 * slip.uncertainty)} % is smaller than a field calibration can reach: it may be a fraction where percent is meant`;
    case 'peers':
      return (
        `Danger ${amount(slip.own.danger, slip.own.unit)} of ${slip.own.tag} and ${amount(slip.other.danger, slip.other.unit)} of ${slip.other.tag} in group '${slip.group}' differ by a factor of ${slip.factor}: ` +
        peerSlips[slip.factor]
      );
  }
}

function against(slip: Extract<UnitSlip, { kind: 'setpoint' }>): string {
  const level = amount(slip.level, slip.unit);
  return slip.against === 'alert'
    ? `is ${rounded(slip.ratio)} times the alert of ${level}`
    : `against the ${slip.against} of ${level} is off by a factor of ${rounded(slip.ratio)}`;
}
