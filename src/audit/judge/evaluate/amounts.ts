import type { Kind } from '../../model/channel.ts';
import type { AssumedUnit } from '../../read/rows/units.ts';
import { convert } from '../../../units/unit.ts';
import { convertDetection } from '../../../units/detection.ts';
import { parseUnit, type Detection, type Unit } from '../../../units/parse.ts';
import type { Amount } from '../../read/rows/rowReader.ts';
import type { TableKind } from '../../read/tables/vocabulary.ts';
import { nameOfColumn } from '../../read/tables/vocabulary.ts';
import type { NotJudged } from '../../model/threshold.ts';
import type { CommonUnits } from './commonUnits.ts';
import type { Diagnostics } from './diagnostics.ts';

/** What the amounts of one channel are brought into, and who is told of what is odd about them. */
export interface AmountContext extends CommonUnits {
  readonly rows: Readonly<Record<TableKind, number>>;
  readonly diagnostics: Diagnostics;
  readonly assume: (assumed: AssumedUnit) => void;
  /** A detection column overrules what the headers of the setpoints say. */
  readonly detectionColumn: boolean;
  /** Where a detection is taken only as it is stated: on all but radial channels, which count peak to peak. */
  readonly asStated: boolean;
  /** Levels that turned out not to be comparable with the setpoints. */
  readonly notCompared: NotJudged[];
}

/** A level (setpoint, limit, reading …) in the channel's unit and detection; `null` where none is given or it can't be. */
export function level(
  context: AmountContext,
  table: TableKind,
  column: string,
  amount: Amount | null,
): number | null {
  if (!amount) return null;
  const { unit, detection } = context;
  if (!amount.unit) {
    context.assume({ table, column, unit: unit.text, row: context.rows[table] });
    return amount.value;
  }
  const value = convert(amount.value, amount.unit, unit);
  if (Number.isNaN(value)) {
    return context.diagnostics.add(table, column, 'unit-does-not-fit', {
      kind: 'level',
      value: amount.value,
      unit: amount.unit.text,
      setpointUnit: unit.text,
    });
  }
  const overruled = context.detectionColumn && (column === 'alert' || column === 'danger');
  const from = overruled ? undefined : amount.unit.detection;
  if (context.asStated && !isComparable(context, column, from ?? null)) {
    const quantity = nameOfColumn(column);
    if (column === 'limit') context.notCompared.push('limit');
    if (column === 'fullScale') context.notCompared.push('full scale');
    const values = { quantity, own: from ?? null, ofSetpoints: detection };
    return context.diagnostics.add(table, column, 'detection-not-said', values, 'nothing');
  }
  return from && detection ? convertDetection(value, from, detection) : value;
}

/** Whether both detections are stated or neither is; the monitor's own levels are in the detection of its column. */
function isComparable(
  { detection, detectionColumn }: AmountContext,
  column: string,
  own: Detection | null,
): boolean {
  if (column === 'danger' || column === 'resolution') return true;
  if (own === null && detectionColumn && column !== 'limit') return true;
  return (own === null) === (detection === null);
}

/** A counter-direction setpoint, written as a positive amount, as the negative position it is. */
export function counterLevel(
  context: AmountContext,
  column: 'counterAlert' | 'counterDanger',
  amount: Amount | null,
): number | null {
  const value = level(context, 'settings', column, amount);
  return value === null ? null : -value;
}

/** A growth per day in the channel's unit and detection. */
export function growthPerDay(context: AmountContext, amount: Amount | null): number | null {
  if (!amount?.unit?.dimension.endsWith('/time')) return level(context, 'channels', 'growth', amount);
  const dimension = amount.unit.dimension.slice(0, -'/time'.length) as Unit['dimension'];
  const perDay = { value: amount.value, unit: { ...amount.unit, dimension } };
  return level(context, 'channels', 'growth', perDay);
}

function unitNamed(text: string): Unit {
  const unit = parseUnit(text);
  if (!unit) throw new Error(`unit ${text} is not known`);
  return unit;
}

/** Units of amounts whose dimension is their column's own. */
export const fixed = {
  volt: unitNamed('V'),
  milliampere: unitNamed('mA'),
  metre: unitNamed('m'),
  second: unitNamed('s'),
  day: unitNamed('day'),
  speed: unitNamed('r/min'),
  percent: unitNamed('%'),
} as const;

/** An amount in a unit of its own dimension; its number as it stands where nothing names its unit. */
export function inUnit(amount: Amount | null, unit: Unit): number | null {
  if (!amount) return null;
  return amount.unit ? convert(amount.value, amount.unit, unit) : amount.value;
}

/**
 * An amount that is in its range, in a unit of its own dimension; `null` where none is given, or with a warning where it is
 * below `least` or above `most`, both in that unit.
 */
export function inRange(
  amount: Amount | null,
  column: string,
  unit: Unit,
  [least, most]: readonly [number, number],
  { diagnostics }: Pick<AmountContext, 'diagnostics'>,
): Amount | null {
  const value = inUnit(amount, unit);
  if (amount === null || value === null || (value >= least && value <= most)) return amount;
  const kind = value < least ? 'at least' : 'at most';
  const own = amount.unit ?? unit;
  const bound = { kind, than: convert(value < least ? least : most, unit, own) } as const;
  const values = { header: nameOfColumn(column), value: amount.value, unit: own.text, bound };
  return diagnostics.add('channels', column, 'value-out-of-range', { kind: 'bound', ...values });
}

/** The present reading in the channel's unit: a size, which is never negative, but for a position or a loop. */
export function readingOf(context: AmountContext, kind: Kind, amount: Amount | null): number | null {
  const reading = level(context, 'channels', 'reading', amount);
  if (reading === null || reading >= 0 || kind === 'axial' || kind === 'loop') return reading;
  return context.diagnostics.add('channels', 'reading', 'value-out-of-range', {
    kind: 'reading below 0',
    value: reading,
    unit: context.unit.text,
  });
}
