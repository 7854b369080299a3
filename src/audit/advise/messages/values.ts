import type { Bound, ValueRules } from '../../model/rules/valueRules.ts';
import type { Place } from '../../model/findings.ts';
import { amount, listed } from '../../model/wording.ts';
import type { Sayings } from './sayings.ts';

/** What is said of the values of a channel and its settings. */
export const valueMessages: Sayings<ValueRules> = {
  'value-missing': ({ values }) => `The ${values.what} is missing; enter it.`,
  'value-out-of-range': ({ values }) => outOfRange(values),
  'zero-voltage-missing': ({ values }) =>
    `The ${values.which} zero voltage is missing, so it is not known where the position acts. Enter it.`,
  'zero-voltage-positive': ({ values: { which, volts } }) =>
    `The ${which.replace(' ', '-')} zero voltage ${volts} V is positive; gap voltages of these probes are negative. Correct the sign.`,
  'direction-missing': () =>
    'The positive direction (toward or away) is missing, and the zero voltages differ: the thresholds depend on it. Enter it.',
  'gap-voltage-positive': ({ values: { which, volts } }) =>
    `The ${which === 'as found' ? 'gap voltage' : 'as-left gap voltage'} ${volts} V is positive; gap voltages of these probes are negative. It was not used. Correct the sign.`,
  'kind-missing': ({ values: { signs } }) =>
    `The kind of the channel is missing, and its ${listed(signs)} ${signs.length === 1 ? 'does' : 'do'} not belong to radial vibration. Enter radial, axial, velocity, acceleration or loop.`,
  'tables-contradict': ({ values: { quantity, inChannels, inSettings } }) =>
    `The ${quantity} is ${inChannels.text} at ${at(inChannels.place)} and ${inSettings.text} at ${at(inSettings.place)}. Correct one of them.`,
  'counter-setpoint-not-axial': () =>
    'Counter setpoints belong to axial channels; this one is of another kind, so they were not audited.',
  'sensitivity-from-record': ({ values: { sheet, row, value, unit } }) =>
    `The channel list has no measured sensitivity; the average of its calibration record in row ${row} of sheet '${sheet}', ${amount(value, unit)}, was used.`,
};

function at({ sheet, row, column }: Place): string {
  return `${sheet}!${column}${row}`;
}

function outOfRange(values: ValueRules['value-out-of-range']): string {
  switch (values.kind) {
    case 'bound':
      return physicalRange(values.header, String(values.value), values.unit, mustBe(values.bound));
    case 'not finite':
      return physicalRange(values.header, values.cell, values.unit, 'must be a finite number');
    case 'uncertainty not comparable':
      return `An uncertainty in ${values.unit} can't be compared with the measured sensitivity. Correct the unit.`;
    case 'shared above the whole': {
      const whole =
        values.whole === null
          ? 'no uncertainty is given'
          : `the whole uncertainty is ${percentOf(values.whole)}`;
      return `A shared uncertainty of ${percentOf(values.shared)} was not used: ${whole}, of which it must be a part. Correct either.`;
    }
    case 'uncertainty too large':
      return `An uncertainty of ${Number((values.fraction * 100).toPrecision(4))} % is outside its physical range: it must be below 100 %. Check the entry.`;
    case 'reading below 0':
      return `The present reading of ${values.value} ${values.unit} is below 0, which a size of vibration never is. It was not used. Check the entry.`;
  }
}

function physicalRange(header: string, number: string, unit: string | null, must: string): string {
  return `'${header}': ${unit === null ? number : `${number} ${unit}`} is outside its physical range: it ${must}. Check the entry.`;
}

function mustBe({ kind, than }: Bound): string {
  switch (kind) {
    case 'above':
      return `must be above ${than}`;
    case 'at least':
      return `must be ${than} or more`;
    case 'at most':
      return `must be ${than} or less`;
  }
}

function percentOf(fraction: number): string {
  return `${Number((fraction * 100).toPrecision(4))} %`;
}
