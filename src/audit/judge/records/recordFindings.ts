import { factOf, type Fact, type Place, type PlacedFact } from '../../model/findings.ts';
import { stepNotFalling } from '../../../method/record/calibrationRecord.ts';
import { convert } from '../../../units/unit.ts';
import type { Channel } from '../../model/channel.ts';
import type { Policy } from '../../model/policy.ts';
import type { DynamicResult, RecordResult } from '../../model/report.ts';
import type { RecordRules, SeriesName, UnusableRecord } from '../../model/rules/recordRules.ts';
import { type Chosen, type Usable, leastPoints, mostPoints, type Fault } from './chooseRecord.ts';
import { operatingPoint } from './curveFindings.ts';
import type { ChannelRecords } from './recordEvidence.ts';
import { perGap, upDownResult } from './evaluateRecord.ts';
import type { RawCheck, RawRecord } from '../../read/records/rawRecord.ts';
import { asLeft } from '../../read/records/recordCells.ts';

/** What there is to look at. */
export interface RecordInputs {
  readonly records: ChannelRecords;
  /** Record and check that count now. */
  readonly usable: Usable | undefined;
  readonly check: RawCheck | undefined;
  readonly record: RecordResult | null;
  readonly dynamic: DynamicResult | null;
  readonly channel: Channel;
  readonly policy: Policy;
}

type AddFinding = (fact: Fact, place: Place) => void;

/** Everything to be said about the records of one channel, each at its place. */
export function recordFindings(looked: RecordInputs): PlacedFact[] {
  const findings: PlacedFact[] = [];
  const addFinding: AddFinding = (fact, { sheet, row, column }) => {
    findings.push({ ...fact, sheet, row, column });
  };
  const { chosen, checks, all } = looked.records;
  for (const { remarks } of all) findings.push(...remarks);
  unusable(chosen, addFinding);
  const shown = looked.usable ?? chosen.used;
  if (shown) ofUsed(looked, shown, addFinding);
  otherChecks(checks, addFinding);
  dynamicDisagrees(looked, addFinding);
  return findings;
}

function unusable({ faults }: Chosen, addFinding: AddFinding): void {
  for (const { raw, fault } of faults) {
    const values = recordTrouble(raw, fault);
    addFinding(factOf('record-unusable', 'warning', values), placeOfPoint(raw, fault.at));
  }
}

function placeOfPoint(raw: RawRecord, at: number): Place {
  return { sheet: raw.sheet, row: raw.points[at]?.row ?? raw.row, column: raw.column };
}

function ofUsed(looked: RecordInputs, shown: Usable, addFinding: AddFinding): void {
  const { raw, record } = shown;
  const { channel, policy, records, usable } = looked;
  const { kind } = channel;
  if (kind !== 'radial' && kind !== 'axial') {
    addFinding(factOf('record-of-another-kind', 'note', { kind }), raw);
    return;
  }
  const both = upDownResult(shown);
  if (both) {
    const { cycles, hysteresis, repeatability, oneWay } = both;
    const values = { cycles, hysteresis, repeatability, oneWay, gapUnit: raw.gapUnit.text };
    addFinding(factOf('record-read-up-and-down', 'note', values), raw);
  }
  if (record.sorted) addFinding(factOf('record-sorted', 'note', {}), raw);
  const { used, others } = records.chosen;
  otherRecords(
    raw,
    [...(used ? [used] : []), ...others].filter((other) => other.raw !== raw),
    addFinding,
  );
  const rising = stepNotFalling(record);
  if (rising !== undefined) {
    const [from, to] = [record.gaps[rising] ?? NaN, record.gaps[rising + 1] ?? NaN];
    addFinding(factOf('record-not-falling', 'warning', { from, to, gapUnit: raw.gapUnit.text }), raw);
  }
  if (!looked.record || !usable) return;
  if (raw.series !== asLeft) disagreesWithList(looked.record, channel, policy, raw, addFinding);
  operatingPoint(looked.record, channel, (fact) => {
    addFinding(fact, raw);
  });
}

function nameOf({ series, temperature }: RawRecord | RawCheck): SeriesName {
  return { series, temperature };
}

function otherChecks([used, ...others]: readonly RawCheck[], addFinding: AddFinding): void {
  if (!used || others.length === 0) return;
  const values = { of: 'checks', used: nameOf(used), others: others.map(nameOf) } as const;
  addFinding(factOf('several-records', 'note', values), used);
}

function otherRecords(raw: RawRecord, others: readonly Usable[], addFinding: AddFinding): void {
  if (others.length === 0) return;
  const values = {
    of: 'records',
    used: nameOf(raw),
    others: others.map((other) => nameOf(other.raw)),
  } as const;
  addFinding(factOf('several-records', 'note', values), raw);
}

function disagreesWithList(
  { average: ofRecord, gapUnit }: RecordResult,
  { measured, sensitivityUnit }: Channel,
  { tolerance }: Policy,
  raw: RawRecord,
  addFinding: AddFinding,
): void {
  const ofList = convert(measured, sensitivityUnit, perGap(raw.gapUnit));
  const fraction = ofRecord / ofList - 1;
  if (!(Math.abs(fraction) > tolerance)) return;
  const values = { kind: 'as found', ofRecord, ofList, fraction, unit: `mV/${gapUnit}` } as const;
  addFinding(factOf('record-disagrees-with-list', 'warning', values), raw);
}

function dynamicDisagrees(looked: RecordInputs, addFinding: AddFinding): void {
  const { dynamic, check, channel, policy } = looked;
  if (!dynamic || !check) return;
  const unit = channel.sensitivityUnit.text;
  const { from, value, expanded } = staticSensitivity(looked);
  const off = dynamic.sensitivity - value;
  const together = Math.hypot(expanded, dynamic.uncertainty ?? 0);
  if (!(Math.abs(off) > together) || !(Math.abs(off) > policy.tolerance * value)) return;
  const values = { dynamic: dynamic.sensitivity, static: value, from, off: off / value, unit };
  addFinding(factOf('static-and-dynamic-disagree', 'warning', values), check);
}

interface StaticSensitivity {
  readonly from: RecordRules['static-and-dynamic-disagree']['from'];
  readonly value: number;
  /** Expanded uncertainty. */
  readonly expanded: number;
}

/** What a check is compared with: the record's sensitivity, else the list's, in the channel's unit, with its uncertainty. */
function staticSensitivity({ record, usable, channel }: RecordInputs): StaticSensitivity {
  const { measured, uncertainty, sensitivityUnit } = channel;
  if (!record || !usable)
    return { from: 'channel list', value: measured, expanded: (uncertainty ?? 0) * measured };
  const here = (value: number): number => convert(value, perGap(usable.raw.gapUnit), sensitivityUnit);
  return {
    from: 'calibration record',
    value: here(record.average),
    expanded: 2 * here(record.averageUncertainty ?? 0),
  };
}

/** Why a record can't be used, with what shows it. */
function recordTrouble({ tag, series, gapUnit, points }: RawRecord, { fault, at }: Fault): UnusableRecord {
  const of = { tag, series };
  switch (fault) {
    case 'gap repeated':
      return { ...of, fault, gap: points[at]?.gap ?? NaN, gapUnit: gapUnit.text };
    case 'too few points':
      return { ...of, fault, points: at, least: leastPoints };
    case 'too many points':
      return { ...of, fault, points: at, most: mostPoints };
    case 'does not fall both ways':
    case 'not a number':
    case 'lengths differ':
      return { ...of, fault };
  }
}
