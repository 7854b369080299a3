import type { Curve } from '../../method/record/curve.ts';
import { type FunctionError, notAvailable } from '../functionError.ts';
import { short } from './short.ts';

/** The gap at a voltage of a measured curve, or that the voltage lies outside it; `name` is what the voltage is called. */
export function gapOnCurve(curve: Curve, voltage: number, name: string): number | FunctionError {
  const gap = curve.gapAt(voltage);
  if (!Number.isNaN(gap)) return gap;
  const [near, far] = [curve.voltsAt(curve.from), curve.voltsAt(curve.to)];
  return notAvailable(
    `${name} ${short(voltage)} V lies outside the record, ${short(near)} V to ${short(far)} V.`,
  );
}
