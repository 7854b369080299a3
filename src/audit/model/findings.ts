import type { RuleId, RuleValues } from './rules/rules.ts';
import type { ThresholdName } from './threshold.ts';

export type Severity = 'critical' | 'warning' | 'note';

/** Where in the workbook something stands: row and column as the spreadsheet shows them. */
export interface Place {
  readonly sheet: string;
  readonly row: number;
  readonly column: string;
}

/** A row of a sheet. */
export interface RowPlace {
  readonly sheet: string;
  readonly row: number;
}

/**
 * Something found, as data: which rule, how grave, about which threshold (`null`: about none in particular), and the values
 * that its sentence is made from.
 */
export type Fact = { readonly [R in RuleId]: FactOf<R> }[RuleId];

export interface FactOf<R extends RuleId> {
  readonly rule: R;
  readonly severity: Severity;
  readonly threshold: ThresholdName | null;
  readonly multiplier: number | null;
  readonly values: RuleValues[R];
}

/** A fact and the cell that it is about. */
export type PlacedFact = Fact & Place;

/** What is found about no threshold in particular. */
export function factOf<R extends RuleId>(rule: R, severity: Severity, values: RuleValues[R]): Fact {
  return { rule, severity, threshold: null, multiplier: null, values } as unknown as Fact;
}

/** What is found about one threshold. */
export function factOfThreshold<R extends RuleId>(
  rule: R,
  severity: Severity,
  { name, multiplier }: { readonly name: ThresholdName; readonly multiplier: number },
  values: RuleValues[R],
): Fact {
  return { rule, severity, threshold: name, multiplier, values } as unknown as Fact;
}

/** A fact at its place. */
export function factAt(
  { sheet, row, column }: Place,
  { rule, severity, threshold, multiplier, values }: Fact,
): PlacedFact {
  return { rule, severity, threshold, multiplier, values, sheet, row, column } as PlacedFact;
}

/** A fact as the report shows it: with its sentence, and its rule named after the threshold that it is about. */
export interface Finding extends Place {
  /** Name of the rule that found it, stable from version to version; begins with the threshold: `danger-late`. */
  readonly rule: string;
  readonly severity: Severity;
  readonly threshold: ThresholdName | null;
  readonly multiplier: number | null;
  readonly values: Readonly<Record<string, unknown>>;
  readonly message: string;
}

/** A finding that belongs to no channel. */
export type Problem = Finding;
