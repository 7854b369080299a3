import type { ColumnEntry, TableColumn, System } from '../../audit/read/tables/columnSpec.ts';

const metric: Readonly<Record<string, string>> = { mil: 'µm', 'mV/mil': 'mV/µm' };

/** Header text of a template: the standard header with a capital, and the unit in square brackets. */
export function headerText(spec: TableColumn, system: System): string {
  const name = spec.name.charAt(0).toUpperCase() + spec.name.slice(1);
  const unit = unitIn(spec.entry.unit, system) ?? spec.usualUnit;
  return unit === undefined ? name : `${name} [${unit}]`;
}

/** A unit of the template in mil as the template of a system has it. */
export function unitIn(unit: string | undefined, system: System): string | undefined {
  return unit === undefined || system === 'mil' ? unit : (metric[unit] ?? unit);
}

/** What an entry of a column looks like. */
export function sampleIn({ sample }: Pick<ColumnEntry, 'sample'>, system: System): string {
  return typeof sample === 'string' ? sample : sample[system];
}
