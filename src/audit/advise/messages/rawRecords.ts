import type { RawRecordRules } from '../../model/rules/rawRecordRules.ts';
import { notANumber } from './reasons.ts';
import type { Sayings } from './sayings.ts';

/** What is said of calibration records and checks with a known vibration as they are read. */
export const rawRecordMessages: Sayings<RawRecordRules> = {
  'record-without-tag': ({ values }) =>
    values.kind === 'block'
      ? `'${values.gapHeader}' and '${values.voltsHeader}' look like a calibration record, but no tag of the channel list stands above them. Write 'Tag' and the tag above the headers.`
      : `Row ${values.row} has a gap and a voltage but no tag, in it or right above it, so it and the rows that follow without a tag belong to no channel. Enter the tag.`,
  'record-without-channel': ({ values }) =>
    `The record of '${values.tag.slice(0, 60)}' belongs to no channel of the channel list, so it was not looked at. Correct the tag, or add the channel.`,
  'record-unit-missing': ({ values }) => unitMissing(values),
  'record-point-left-out': ({ values }) => pointLeftOut(values),
  'records-of-one-point': ({ values }) =>
    `The table in row ${values.headerRow} has a gap and a voltage for each tag, series and temperature, but only one of each: it was not read as calibration records.`,
};

function unitMissing(values: RawRecordRules['record-unit-missing']): string {
  switch (values.kind) {
    case 'gap':
      return `'${values.header}' beside a column of volts looks like a calibration record, but nothing names its unit, so it was not used. Write the unit in brackets in the header, such as Gap (mil).`;
    case 'too large for volts':
      return `'${values.header}' names no unit, and its numbers are too large for gap voltages in V, so ${values.othersUsed ? 'records of that size were' : 'it was'} not used. Write the unit in brackets in the header, such as Output (mV).`;
    case 'detection':
      return `'${values.header}' does not say how it is counted, so the check was not used. Write the unit with p-p, 0-p or rms in brackets in the header, such as (mil p-p) and (mV rms).`;
  }
}

function pointLeftOut(values: RawRecordRules['record-point-left-out']): string {
  switch (values.kind) {
    case 'cell':
      return `'${values.header}': '${values.cell.slice(0, 60)}' ${notAPoint[values.why]}; this point of the record was left out. Enter the number.`;
    case 'below a blank row':
      return `From row ${values.row} on there are more gaps and voltages below a blank row; they were left out of the record of ${values.tag}. Close the gap in the rows if they belong to it.`;
    case 'second column':
      return `'${values.header}' is a second column of its kind in this table; only '${values.firstHeader}' in column ${values.firstColumn} was read. Give every record rows of its own.`;
    case 'level':
      return `A level of ${values.displacement} ${values.unit} at ${values.output} ${values.outputUnit} says nothing of a sensitivity; it was left out. Enter amounts above 0.`;
  }
}

const notAPoint = { ...notANumber, blank: 'is blank', percentage: 'is a percentage' } as const;
