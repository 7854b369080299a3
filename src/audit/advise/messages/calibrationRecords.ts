import type { FactOf } from '../../model/findings.ts';
import type {
  RecordRules,
  UnusableRecord,
  SeriesName,
  RawRecordRules,
} from '../../model/rules/recordRules.ts';
import type { RecordSpread } from '../../model/records.ts';
import { amount, percent } from '../../model/wording.ts';
import { subject, notANumber, type MessagesOf } from './phrases.ts';

/** What is said of calibration records and checks with a known vibration as they are read. */
export const rawRecordMessages: MessagesOf<RawRecordRules> = {
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

const notAPoint = { ...notANumber, blank: 'is blank', percentage: 'is a percentage' } as const;

type Sentences = { readonly [K in keyof RecordRules]: (fact: FactOf<K>) => string };

/** What is said of a channel's calibration record and its check with a known vibration. */
export const recordMessages: Sentences = {
  'record-unusable': ({ values }) => unusable(values),
  'record-of-another-kind': ({ values: { kind } }) =>
    `A calibration record of gaps and volts belongs to a displacement channel; this one is ${kind}, so the record was not used.`,
  'record-read-up-and-down': ({ values: { cycles, hysteresis, repeatability, gapUnit, oneWay } }) => {
    const spread = ({ volts, ofSpan, displacement }: RecordSpread): string =>
      `${amount(volts, 'V')} (${percentOf(ofSpan)} of the span, ${amount(displacement, gapUnit)})`;
    const again = repeatability === null ? '' : `, repeatability ${spread(repeatability)}`;
    const out =
      oneWay.length === 0 ? '' : ` Gaps read one way only stay out: ${oneWay.join(', ')} ${gapUnit}.`;
    return `Read up and down, ${cycles === 1 ? 'one cycle' : `${cycles} cycles`}: hysteresis ${spread(hysteresis)}${again}; the mean curve counts. It may be play of the micrometer: read it again before you blame the probe.${out}`;
  },
  'record-sorted': () => 'The points of the record were not in order of gap; they were sorted.',
  'several-records': ({ values: { of, used, others } }) => {
    const names = others.map((other) => `'${nameOf(other)}'`).join(', ');
    return of === 'checks'
      ? `Several checks with a known vibration: '${nameOf(used)}' was used. Also there: ${names}. As found is taken before as left.`
      : `Several records: '${nameOf(used)}' was used. Also there: ${names}. As found is taken before as left, then the temperature with the lowest sensitivity.`;
  },
  'record-not-falling': ({ values: { from, to, gapUnit } }) =>
    `From ${amount(from, gapUnit)} to ${amount(to, gapUnit)} the voltage does not fall although the gap grows, so the record has no curve on which thresholds can be found. Check these readings, or leave out points where the probe is at the end of its range.`,
  'record-disagrees-with-list': ({ values }) => {
    const { ofRecord, ofList, fraction, unit } = values;
    return values.kind === 'as found'
      ? `The record gives ${amount(ofRecord, unit)}, ${percent(fraction)} off the measured sensitivity of the channel list, ${amount(ofList, unit)}. Find out which is right before you use either; one may be of another probe, date or target.`
      : `The record marked as left in row ${values.row} of sheet '${values.sheet}' gives ${amount(ofRecord, unit)}, ${percent(fraction)} off the as-left sensitivity of the channel list, ${amount(ofList, unit)}. Find out which is right before you use either.`;
  },
  'static-and-dynamic-disagree': ({ values }) =>
    `The check with a known vibration gives ${amount(values.dynamic, values.unit)}, the ${values.from} ${amount(values.static, values.unit)}: ${percent(values.off)} apart, more than both uncertainties and the tolerance. Find out whether both were taken on the same target, with the same cable.`,
  'record-without-gap-voltage': () =>
    'There is a calibration record but no gap voltage, so nothing was worked out on its curve. Enter the gap voltage.',
  'gap-outside-record': ({ values: { gapVoltage, from, to } }) =>
    `The gap voltage ${amount(gapVoltage, 'V')} lies outside the record, ${amount(from, 'V')} to ${amount(to, 'V')}: the chain was not measured there. Check the gap, or take the record further.`,
  'gap-outside-straight-part': ({ values: { operatingGap, from, to, gapUnit, gapVoltage } }) =>
    `The operating gap of ${amount(operatingGap, gapUnit)} (${amount(gapVoltage, 'V')}) lies outside the straight part of the record, ${amount(from, gapUnit)} to ${amount(to, gapUnit)}. Set the probe near the middle of it.`,
  'curve-falls-short': (fact) => {
    const { from, to, gapUnit, largestIndicated, zeroMeasured, unit } = fact.values;
    const span = `${amount(from, gapUnit)} to ${amount(to, gapUnit)}`;
    const why =
      largestIndicated === null
        ? zeroMeasured === null
          ? `its gap voltage lies outside the record (${span}). Take the record further.`
          : `the record (${span}) does not reach the measured zero voltage of ${amount(zeroMeasured, 'V')}, from which positions are counted. Take the record further.`
        : `from its operating gap the record (${span}) supports indications up to ${amount(largestIndicated, unit)} only.`;
    return `${subject(fact)} cannot be shown to act: ${why}`;
  },
  'curve-differs': (fact) => {
    const { onCurve, effective, off, unit } = fact.values;
    return `${subject(fact)} acts at ${amount(onCurve, unit)} on the curve of the calibration record, ${percent(off)} away from the ${amount(effective, unit)} that the one measured sensitivity gives. If the record is of this chain, go by the curve.`;
  },
};

function unusable(trouble: UnusableRecord): string {
  const record = `The record '${trouble.series}' of ${trouble.tag}`;
  switch (trouble.fault) {
    case 'gap repeated':
      return `The gap ${amount(trouble.gap, trouble.gapUnit)} stands twice in the record '${trouble.series}' of ${trouble.tag}; it can't be told which of the two voltages counts, so the record was not used. Correct the gap or delete one of the points; a record that was read up and down needs at least three gaps read both ways.`;
    case 'too few points':
      return `${record} has ${trouble.points === 1 ? 'one usable point' : `${trouble.points} usable points`}; at least ${trouble.least} are needed, so it was not used.`;
    case 'too many points':
      return `${record} has ${trouble.points} points; a calibration record has at most ${trouble.most}, so it was not used. Keep the points of one run, a few for each step of the gap.`;
    case 'does not fall both ways':
      return `${record} was read up and down, but its mean voltage does not fall as the gap grows, so it was not used. Enter gap voltages with their minus sign.`;
    case 'not a number':
    case 'lengths differ':
      return `${record} has a gap or a voltage that is no number, so it was not used. Correct it.`;
  }
}

/** A fraction without a sign, in percent. */
function percentOf(fraction: number): string {
  return `${Number((100 * fraction).toPrecision(2))} %`;
}

function nameOf({ series, temperature }: SeriesName): string {
  return temperature === '' ? series : `${series}, ${temperature}°`;
}

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
