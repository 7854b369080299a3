import { factOf, type Fact, type PlacedFact } from '../../model/findings.ts';
import { isoDate } from '../../../cells/cell.ts';
import type { Policy } from '../../model/policy.ts';
import type { DriftResult } from '../../model/drift.ts';
import type { Drift } from '../../model/rules/historyRules.ts';
import { placeOf } from '../../read/rows/diagnostic.ts';
import { channelReadings, type ReadChannel, type ChannelReading } from './channelReadings.ts';
import { driftLine } from './driftLine.ts';
import { isSameNumber } from '../../model/sameValue.ts';
import type { Channel } from '../../model/channel.ts';

/** A channel's drift, and what is to be said about it. */
export interface AuditedDrift {
  readonly drift: DriftResult | null;
  readonly findings: readonly PlacedFact[];
}

const nothing: AuditedDrift = { drift: null, findings: [] };

/**
 * Works out how a channel's sensitivity drifts. It is said why it can't be only where a history names the channel: most
 * channels have one reading, and nobody misses their drift.
 */
export function auditDrift(of: ReadChannel, policy: Policy, today: number): AuditedDrift {
  if (of.history.length === 0 && !of.before && !of.record) return nothing;
  const findings: PlacedFact[] = [];
  const all = channelReadings(of, (finding) => findings.push(finding));
  // A calibration of a day that has not come is a slip, and is said as such.
  const readings = all.filter(({ day }) => day <= today);
  const { configured, sensitivityUnit } = of.channel;
  const unit = sensitivityUnit.text;
  const newer = newerReading(of.channel, readings);
  if (newer) findings.push(newer);
  const found = driftLine(readings, { configured, unit, tolerance: policy.tolerance, today });
  const addFinding = (fact: Fact): void => {
    findings.push({ ...fact, ...placeOf(of.table, of.row.row, 'measured') });
  };
  if (!('perYear' in found)) {
    if (of.history.length > 0) addFinding(factOf('drift-not-told', 'note', found));
    return { drift: null, findings };
  }
  addFinding(driftFact(found, configured, policy));
  return { drift: found, findings };
}

function driftFact(found: DriftResult, configured: number, policy: Policy): Fact {
  const drift = valuesOf(found, policy);
  if (isOutsideUnseen(found, configured, policy)) {
    const values = { ...drift, kind: 'unseen by the last reading' } as const;
    return factOf('drift-leaves-tolerance', 'warning', values);
  }
  if (leavesEarly(found, policy)) {
    const due = dueDate(found, policy);
    const interval = policy.calibrationIntervalDays;
    const values = { ...drift, kind: 'before the next calibration', due, interval } as const;
    return factOf('drift-leaves-tolerance', 'warning', values);
  }
  return factOf('drift-of-sensitivity', 'note', drift);
}

function valuesOf(drift: DriftResult, { tolerance }: Policy): Drift {
  const { unit, perYear, perYearFraction, expandedUncertainty, startsAnew, leaves } = drift;
  const counted = drift.readings.filter(({ counts }) => counts);
  return {
    readings: counted.length,
    from: counted[0]?.date ?? '',
    to: counted.at(-1)?.date ?? '',
    unit,
    perYear,
    perYearFraction,
    expandedUncertainty,
    startsAnew,
    leaves,
    tolerance,
  };
}

/** Whether the line lies outside the tolerance on the day of the audit, on its way out, and the last reading does not show it. */
function isOutsideUnseen(
  { readings, leaves }: DriftResult,
  configured: number,
  { tolerance }: Policy,
): boolean {
  const last = readings.at(-1)?.sensitivity ?? NaN;
  const off = Math.abs(last / configured - 1);
  return leaves.state === 'outside' && leaves.limit !== null && off <= tolerance * (1 + 1e-12);
}

/** Whether the line is within the tolerance at the last reading and leaves it before the next calibration is due. */
function leavesEarly({ days, leaves }: DriftResult, { calibrationIntervalDays }: Policy): boolean {
  return leaves.days !== null && leaves.days > days && leaves.days <= days + calibrationIntervalDays;
}

function dueDate({ readings }: DriftResult, { calibrationIntervalDays }: Policy): string {
  const last = Date.parse(readings.at(-1)?.date ?? '') / 86_400_000;
  return isoDate(last + calibrationIntervalDays);
}

/**
 * Says that a history holds a later reading than the one by which the channel was judged, and another one: the verdict is
 * then of the past. Of one day what was left counts before what was found. `undefined` where there is none.
 */
function newerReading(
  { calibratedOn, measured, configured, sensitivityUnit }: Channel,
  readings: readonly ChannelReading[],
): PlacedFact | undefined {
  if (calibratedOn === null) return undefined;
  const last = readings
    .filter(({ from, day }) => from === 'history' && day > calibratedOn)
    .toSorted((one, other) => other.day - one.day || Number(other.asLeft) - Number(one.asLeft))
    .at(0);
  if (!last || isSameNumber(last.sensitivity, measured)) return undefined;
  const { sensitivity, day, sheet, row, column } = last;
  const values = {
    sensitivity,
    on: isoDate(day),
    off: sensitivity / configured - 1,
    measured,
    calibratedOn: isoDate(calibratedOn),
    unit: sensitivityUnit.text,
  };
  return { ...factOf('history-has-newer-reading', 'warning', values), sheet, row, column };
}
