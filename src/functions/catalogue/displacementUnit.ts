import type { UnitArgument } from '../declare/argument.ts';
import { type FunctionError, refused } from '../functionError.ts';
import { parseUnit } from '../../units/parse.ts';
import type { Unit } from '../../units/unit.ts';

/** µm, in which the method gives zone boundaries. */
export const MICROMETRE = parseUnit('um') as Unit;

/** A unit of peak-to-peak displacement; µm if left out. */
export function displacementUnit(name: string, description: string) {
  return {
    kind: 'unit',
    name,
    dimensions: ['displacement'],
    such: '"mil", "um" or "mm"',
    otherwise: 'um',
    description,
  } as const satisfies UnitArgument;
}

/** Refuses a unit that names a detection other than peak-to-peak; `undefined` where it is fine. */
export function notPeakToPeak(name: string, { detection }: Unit): FunctionError | undefined {
  if (detection === undefined || detection === 'p-p') return undefined;
  return refused(`${name} is ${detection}: displacement is peak-to-peak here, leave "${detection}" out.`);
}
