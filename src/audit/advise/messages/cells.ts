import { amount, rounded } from '../../model/wording.ts';
import type { CellFault, CellRules, NumberDoubt, UnitFault } from '../../model/rules/cellRules.ts';
import { notADate, notANumber } from './reasons.ts';
import type { Sayings } from './sayings.ts';

/** What is said of one cell as it is read. */
export const cellMessages: Sayings<CellRules> = {
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
