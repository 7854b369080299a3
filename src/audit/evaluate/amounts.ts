import { convert } from '../../units/convert.ts';
import { convertDetection } from '../../units/detection.ts';
import { parseUnit, type Unit } from '../../units/parse.ts';
import type { Amount } from '../rows/rowReader.ts';
import type { TableKind } from '../tables/vocabulary.ts';
import type { CommonUnits } from './commonUnits.ts';
import type { Complaints } from './complaints.ts';

/** A column whose numbers had no unit of their own and were taken in the unit of the setpoints. */
export interface AssumedUnit {
  readonly table: TableKind;
  readonly column: string;
  readonly unit: string;
  readonly row: number;
}

/** Brings the amounts of a channel into its common units. */
export interface AmountsIn {
  /** A level (setpoint, limit, reading …) in the channel's unit and detection. */
  readonly level: (table: TableKind, column: string, amount: Amount | null) => number | null;
  /** A growth per day in the channel's unit and detection. */
  readonly growth: (amount: Amount | null) => number | null;
}

/** Conversions into a channel's units; `rows` are its row in either table. */
export function amountsIn(
  common: CommonUnits,
  rows: Readonly<Record<TableKind, number>>,
  complaints: Complaints,
  assume: (assumed: AssumedUnit) => void,
  detectionColumn: boolean,
): AmountsIn {
  const { unit, detection } = common;
  const level: AmountsIn['level'] = (table, column, amount) => {
    if (!amount) return null;
    if (!amount.unit) {
      assume({ table, column, unit: unit.text, row: rows[table] });
      return amount.value;
    }
    const value = convert(amount.value, amount.unit, unit);
    if (Number.isNaN(value)) {
      const message = `${amount.value} ${amount.unit.text} can't be compared with setpoints in ${unit.text}. Correct the unit.`;
      return complaints.add(table, column, 'unit-does-not-fit', message);
    }
    const overruled = detectionColumn && (column === 'alert' || column === 'danger');
    const from = overruled ? undefined : amount.unit.detection;
    return from && detection ? convertDetection(value, from, detection) : value;
  };
  return {
    level,
    growth(amount) {
      if (!amount?.unit?.dimension.endsWith('/time')) return level('channels', 'growth', amount);
      const dimension = amount.unit.dimension.slice(0, -'/time'.length) as Unit['dimension'];
      return level('channels', 'growth', { value: amount.value, unit: { ...amount.unit, dimension } });
    },
  };
}

function unitNamed(text: string): Unit {
  const unit = parseUnit(text);
  if (!unit) throw new Error(`unit ${text} is not known`);
  return unit;
}

/** Units of amounts whose dimension is their column's own. */
export const fixed = {
  volt: unitNamed('V'),
  second: unitNamed('s'),
  day: unitNamed('day'),
  speed: unitNamed('r/min'),
} as const;

/** An amount in a unit of its own dimension; its number as it stands where nothing names its unit. */
export function inUnit(amount: Amount | null, unit: Unit): number | null {
  if (!amount) return null;
  return amount.unit ? convert(amount.value, amount.unit, unit) : amount.value;
}
