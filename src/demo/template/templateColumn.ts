import type { ColumnSpec } from '../../audit/read/tables/vocabulary.ts';
import type { Allowed } from '../parts/validation.ts';

/** What a template says about one column beyond its header. */
export interface ColumnHelp {
  /** One line for the person who fills it in. */
  readonly meaning: string;
  readonly allowed?: Allowed;
  /** The unit in the header's brackets, where the column's meaning does not name a usual one. */
  readonly unit?: string;
  /** A value outside `allowed` is asked about, but may be kept. */
  readonly warnOnly?: true;
}

/** Header text of a template: the standard header with a capital, and the unit in square brackets. */
export function headerText(spec: ColumnSpec, help: ColumnHelp): string {
  const name = spec.name.charAt(0).toUpperCase() + spec.name.slice(1);
  const unit = help.unit ?? spec.usualUnit;
  return unit === undefined ? name : `${name} [${unit}]`;
}
