import type { FaultLimits } from '../../model/channel.ts';
import type { FactOf } from '../../model/findings.ts';
import type { ThresholdRules } from '../../model/rules/thresholdRules.ts';
import { amount, percent } from '../../model/wording.ts';
import { chanceWords, ofMeasurement } from '../machineSentences.ts';
import { spuriousAction, subject } from './phrases.ts';

type Sentences = { readonly [K in keyof ThresholdRules]: (fact: FactOf<K>) => string };

/** What is said of where a threshold acts. */
export const thresholdMessages: Sentences = {
  late: (fact) => `${acts(fact)} late.`,
  early: (fact) => `${acts(fact)} early. ${spuriousAction(fact)}`,
  undetermined: (fact) => {
    const { low, high, unit, uncertainty, tolerance, governedBy } = fact.values;
    if (low === null && high === null)
      return `${subject(fact)} can't be shown to act by the ${governedBy}. Measure the chain again.`;
    const [from, to] = [low, high].map((end) => (end === null ? 'an unknown level' : amount(end, unit)));
    const width = uncertainty === null ? '' : ` with an uncertainty of ${percent(uncertainty)}`;
    return (
      `${subject(fact)} acts somewhere from ${from ?? ''} to ${to ?? ''}:` +
      `${width} that may or may not be within the tolerance of ${percent(tolerance)}. Measure more accurately.`
    );
  },
  'above-full-scale': aboveFullScale,
  'multiplied-above-full-scale': aboveFullScale,
  'on-the-other-side-of-zero': beyondZero,
  'multiplied-on-the-other-side-of-zero': beyondZero,
  'out-of-linear-reach': outOfReach,
  'multiplied-out-of-linear-reach': outOfReach,
  'beyond-limit': (fact) => {
    const { effective, limit, unit, probability } = fact.values;
    const chance =
      probability === null
        ? ''
        : ` The probability that it acts beyond the limit is ${chanceWords(probability)}, ${ofMeasurement}.`;
    return `${subject(fact)} acts at ${amount(effective, unit)}, beyond the limit of ${amount(limit, unit)}.${chance}`;
  },
  'may-be-beyond-limit': (fact) => {
    const { limit, high, unit } = fact.values;
    const upTo = high === null ? 'an unknown level' : amount(high, unit);
    return `${subject(fact)} may act beyond the limit of ${amount(limit, unit)}: with its uncertainty it acts at up to ${upTo}.`;
  },
  'outside-fault-limits': outsideFaults,
  'multiplied-outside-fault-limits': outsideFaults,
  'in-worse-zone': (fact) => {
    const { zone, intendedZone, speed } = fact.values;
    return `${subject(fact)} was set in zone ${intendedZone} and acts in zone ${zone} at ${amount(speed, 'r/min')}.`;
  },
  'swing-leaves-fault-limits': (fact) => {
    const { swing, faultLimits } = fact.values;
    return (
      `The voltage at ${subject(fact)} swings from ${amount(swing.far, 'V')} to ${amount(swing.near, 'V')}, ${outside(faultLimits)}: ` +
      `the channel may be marked faulty before it trips, unless the fault is judged on the filtered gap voltage.`
    );
  },
  'interim-below-reading': (fact) => {
    const { reading, interimSetpoint, unit } = fact.values;
    return `The present reading of ${amount(reading, unit)} is already at or past ${amount(interimSetpoint, unit)}, the interim setpoint for ${subject(fact)}: entered now, it would act at once.`;
  },
  'has-no-interim-setpoint': (fact) => {
    const { indicated, unit } = fact.values;
    const shown =
      indicated === null
        ? ''
        : `: the monitor shows ${amount(indicated, unit)} there, and no step of its own on that side lies below`;
    return `No setpoint makes up for ${subject(fact)}${shown}.`;
  },
  'delay-long': ({ threshold, values: { delay, allowed, level, unit } }) => {
    const grown = level === null ? '' : ` At the present growth the level by then is ${amount(level, unit)}.`;
    return `The ${threshold ?? ''} delay of ${amount(delay, 's')} is longer than the ${amount(allowed, 's')} of the policy.${grown}`;
  },
};

function acts(fact: FactOf<'late' | 'early'>): string {
  const { effective, shift, shiftFraction, unit } = fact.values;
  return `${subject(fact)} acts at ${amount(effective, unit)}: ${amount(shift, unit)} (${percent(shiftFraction)})`;
}

function aboveFullScale(fact: FactOf<'above-full-scale' | 'multiplied-above-full-scale'>): string {
  const { fullScale, unit } = fact.values;
  return `${subject(fact)} is above the full scale of ${amount(fullScale, unit)}: the monitor can't show it, so it can't act.`;
}

function beyondZero(
  fact: FactOf<'on-the-other-side-of-zero' | 'multiplied-on-the-other-side-of-zero'>,
): string {
  const { effective, unit, zeroConfigured, zeroMeasured } = fact.values;
  if (zeroConfigured === null || zeroMeasured === null)
    return `${subject(fact)} acts at ${amount(effective, unit)}, below the real zero: the loop current at 0 % lies above the current at which it acts. It acts at rest.`;
  return `${subject(fact)} acts at ${amount(effective, unit)}, on the other side of the real zero: the zero voltage has moved from ${amount(zeroConfigured, 'V')} to ${amount(zeroMeasured, 'V')}. It acts at rest, or never in its own direction.`;
}

function outsideFaults(fact: FactOf<'outside-fault-limits' | 'multiplied-outside-fault-limits'>): string {
  const { volts, faultLimits } = fact.values;
  return `${subject(fact)} would act at ${voltsText(volts)}, ${outside(faultLimits)}: the monitor marks the channel faulty before it trips.`;
}

function outside({ far, near }: FaultLimits): string {
  if (far === null || near === null) return `outside the fault limit of ${amount(far ?? near ?? NaN, 'V')}`;
  return `outside the fault limits of ${amount(far, 'V')} to ${amount(near, 'V')}`;
}

function voltsText(volts: readonly number[]): string {
  return volts.map((one) => amount(one, 'V')).join(' or ');
}

function outOfReach(fact: FactOf<'out-of-linear-reach' | 'multiplied-out-of-linear-reach'>): string {
  return `${subject(fact)} ${howOutOfReach(fact.values)}: do not count on it.`;
}

function howOutOfReach(values: ThresholdRules['out-of-linear-reach']): string {
  const { unit } = values;
  if (values.kind === 'voltage')
    return `would act at ${voltsText(values.volts)}, outside the linear span of ${spanText(values.span)}`;
  const acting = `acts at ${amount(values.effective, unit)}, but`;
  const gapVoltage = amount(values.gapVoltage, 'V');
  switch (values.kind) {
    case 'outside the straight part':
      return `${acting} its gap voltage of ${gapVoltage} lies outside the straight part of its calibration record`;
    case 'near the end of the straight part':
      return `${acting} its gap voltage of ${gapVoltage} lies so near the end of the straight part of its calibration record that it reaches only ${amount(values.reach, unit)}`;
    case 'swing':
      return `${acting} from a gap of ${gapVoltage} the chain is linear only up to ${amount(values.reach, unit)} (${spanText(values.span)})`;
  }
}

function spanText({ near, far }: { readonly near: number; readonly far: number }): string {
  return `${amount(near, 'V')} to ${amount(far, 'V')}`;
}
