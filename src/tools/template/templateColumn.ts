import type { ColumnSpec } from '../../audit/read/tables/vocabulary.ts';
import type { Allowed } from '../demo/parts/validation.ts';

/** The units in which a template is kept. */
export type System = 'mil' | 'µm';

const metric: Readonly<Record<string, string>> = { mil: 'µm', 'mV/mil': 'mV/µm' };

/** What a template says about one column beyond its header. */
export interface ColumnHelp {
  /** One line for the person who fills it in. */
  readonly meaning: string;
  readonly allowed?: Allowed;
  /** The unit in the header's brackets, where the column's meaning does not name a usual one; of the template in mil. */
  readonly unit?: 'mil' | 'mV/mil';
  /** What an entry looks like, invented; by the units of the template where it hangs on them. */
  readonly sample: string | Readonly<Record<System, string>>;
  /** A value outside `allowed` is asked about, but may be kept. */
  readonly warnOnly?: true;
}

/** Header text of a template: the standard header with a capital, and the unit in square brackets. */
export function headerText(spec: ColumnSpec, help: ColumnHelp, system: System): string {
  const name = spec.name.charAt(0).toUpperCase() + spec.name.slice(1);
  const unit = unitIn(help.unit, system) ?? spec.usualUnit;
  return unit === undefined ? name : `${name} [${unit}]`;
}

/** A unit of the template in mil as the template of a system has it. */
export function unitIn(unit: string | undefined, system: System): string | undefined {
  return unit === undefined || system === 'mil' ? unit : (metric[unit] ?? unit);
}

/** What an entry of a column looks like. */
export function sampleIn({ sample }: Pick<ColumnHelp, 'sample'>, system: System): string {
  return typeof sample === 'string' ? sample : sample[system];
}
