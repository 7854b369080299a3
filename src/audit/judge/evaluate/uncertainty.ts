import { convert } from '../../../units/convert.ts';
import type { Amount } from '../../read/rows/rowReader.ts';
import type { Complaints } from './complaints.ts';

/**
 * The expanded uncertainty as a fraction of the measured sensitivity, from percent or from a sensitivity; `null` where
 * none is given, or with a complaint where it is 100 % or more or in a unit that does not fit.
 */
export function uncertaintyOf(
  uncertainty: Amount | null,
  measured: Amount | null,
  column: 'uncertainty' | 'asLeftUncertainty',
  complaints: Pick<Complaints, 'add'>,
): number | null {
  if (!uncertainty || !measured) return null;
  const refuse = (message: string) => complaints.add('channels', column, 'value-out-of-range', message);
  const { value, unit } = uncertainty;
  const absolute = unit && unit.dimension !== 'percent' && measured.unit;
  const fraction = absolute ? convert(value, unit, measured.unit) / measured.value : value / 100;
  if (Number.isNaN(fraction)) {
    return refuse(
      `An uncertainty in ${unit?.text ?? '%'} can't be compared with the measured sensitivity. Correct the unit.`,
    );
  }
  if (fraction >= 1) {
    return refuse(
      `An uncertainty of ${Number((fraction * 100).toPrecision(4))} % is outside its physical range: it must be below 100 %. Check the entry.`,
    );
  }
  return fraction;
}
