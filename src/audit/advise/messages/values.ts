import type {
  Bound,
  ValueRules,
  CellFault,
  CellRules,
  NumberDoubt,
  UnitFault,
} from '../../model/rules/cellRules.ts';
import type { Place } from '../../model/findings.ts';
import { amount, listed, rounded } from '../../model/wording.ts';
import { type MessagesOf, notADate, notANumber } from './phrases.ts';

/** What is said of one cell as it is read. */
export const cellMessages: MessagesOf<CellRules> = {
  'value-is-an-error': ({ values }) => bareNumber(values.header, values.cell, notANumber[values.why]),
  'value-not-a-number': ({ values }) =>
    values.kind === 'text'
      ? bareNumber(values.header, values.cell, notANumber[values.why])
      : `'${values.header}': ${values.value} % is a percentage; write the number in the unit of its column.`,
  'number-written-as-text': ({ values: { header, cell, value } }) =>
    `'${header}': the number ${cell.slice(0, 40)} is written as text; it was used as ${value}.`,
  'unit-not-clear': ({ values }) =>
    `'${values.header}': ${unitFault(values)}; write one unit in brackets in the header or in a unit column.`,
  'value-not-a-date': ({ values: { header, cell, why } }) =>
    `'${header}': '${cell.slice(0, 60)}' ${notADate[why]}; write it as year-month-day, such as 2025-03-14.`,
  'value-not-understood': ({ values: { header, cell, expected } }) =>
    `'${header}': '${cell.slice(0, 60)}' is not understood; write ${alternatives(expected)}.`,
  'said-blank': ({ values: { header, cell } }) =>
    `'${header}': '${cell.slice(0, 40)}' says that there is nothing; it was read as a blank cell.`,
  'unit-in-cell': ({ values: { header, cell, unit, of } }) =>
    `'${header}': '${cell.slice(0, 40)}' names its own unit, ${unit}; ${of === null ? 'it was read in it' : `it was converted into ${of}`}.`,
  'number-in-doubt': ({ values: { header, cell, doubt } }) =>
    `'${header}': '${cell.slice(0, 40)}' ${doubts[doubt]}; write the bare number, or say which it is.`,
  'share-of-full-scale': ({ values: { header, percent, scale, unit } }) =>
    `'${header}': ${rounded(percent)} % of the full scale of ${amount(scale, unit)} is ${amount((percent * scale) / 100, unit)}.`,
  'kind-against-unit': ({ values: { header, cell, unit } }) =>
    `'${header}': '${cell.slice(0, 40)}' does not fit a sensitivity in ${unit}; say what kind of channel it is.`,
  'share-without-full-scale': ({ values: { header, percent } }) =>
    `'${header}': ${rounded(percent)} % of full scale is no level without the full scale of its channel; enter it with its unit.`,
};

const doubts: Readonly<Record<NumberDoubt, string>> = {
  about: 'is about so much, not a measured number',
  remark: 'has a remark with its number',
  bound: 'is a bound, not a number',
  several: 'names several numbers',
  comma: 'may have a decimal comma or a thousands separator',
};

/** What is said of the values of a channel and its settings. */
export const valueMessages: MessagesOf<ValueRules> = {
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
  'vector-not-whole': ({ values: { missing } }) =>
    `The ${missing} is missing, so nothing was compensated for runout. Enter it.`,
  'loop-ends-not-used': ({ values }) => loopEnds(values),
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

function loopEnds(values: ValueRules['loop-ends-not-used']): string {
  switch (values.kind) {
    case 'one missing':
      return `The loop current ${values.which} is missing, so the other end was not used. Enter both.`;
    case 'not rising':
      return `The loop current at 100 % (${values.at100} mA) is not above the one at 0 % (${values.at0} mA). Check which end is which.`;
    case 'no span':
      return 'The loop currents were not used: without a full scale the span of the loop is not known. Enter the full scale.';
    case 'not measured again':
      return `The ends of the loop were not measured again: the lower one stays at ${amount(values.at0, 'mA')} as found, the as-left sensitivity puts the upper one at ${amount(values.at100, 'mA')}. Enter the loop currents as they are now.`;
    case 'against the sensitivity':
      return `The ends of the loop give ${amount(values.byEnds, values.unit)}, the list says ${amount(values.listed, values.unit)}. The ends were used. Measure the loop again and correct the one that is wrong.`;
  }
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

/** The sentence of what is wrong with a cell. */
export function cellMessage(fault: CellFault): string {
  const say = cellMessages[fault.rule] as (fault: CellFault) => string;
  return say(fault);
}

function bareNumber(header: string, cell: string, why: string): string {
  return `'${header}': '${cell.slice(0, 60)}' ${why}; write the bare number, with its unit in the header.`;
}

function unitFault(fault: CellRules['unit-not-clear'] & UnitFault): string {
  switch (fault.kind) {
    case 'header does not fit':
      return `the unit '${fault.unit}' in the header '${fault.header}' does not fit ${fault.quantity}`;
    case 'header not known':
      return `the unit '${fault.unit.slice(0, 40)}' in its header is not known`;
    case 'header against row':
      return `its header says ${fault.ofHeader} and its row says ${fault.ofRow}`;
    case 'cell not known':
      return `its unit '${fault.unit.slice(0, 40)}' in column ${fault.unitColumn} is not known`;
    case 'two in row':
      return `its row names two units, ${fault.units[0]} and ${fault.units[1]}`;
  }
}

function alternatives(words: readonly string[]): string {
  const last = words.at(-1) ?? '';
  return words.length > 1 ? `${words.slice(0, -1).join(', ')} or ${last}` : last;
}
