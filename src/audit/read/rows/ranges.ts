import type { FoundTable } from '../tables/found.ts';
import { columnsOf } from '../tables/vocabulary.ts';
import { factOf } from '../../model/findings.ts';
import type { Bound } from '../../model/rules/cellRules.ts';
import type { Diagnostic } from './diagnostic.ts';
import type { Amount } from './rowReader.ts';

interface Checked {
  readonly diagnostics: readonly Diagnostic[];
}

/** What the amounts of a row must keep to: each must be finite and within its bounds. */
export type Ranges<T extends Checked> = readonly (readonly [id: AmountId<T>, bounds: readonly Bound[]])[];

type AmountId<T> = { [K in keyof T]: T[K] extends Amount | null ? K : never }[keyof T] & string;

export const above0: readonly Bound[] = [{ kind: 'above', than: 0 }];
export const atLeast0: readonly Bound[] = [{ kind: 'at least', than: 0 }];

/**
 * Checks the amounts of a row against their physical ranges. An amount out of range becomes `null`, with
 * `value-out-of-range` told of it, so that no number is worked out from it.
 */
export function checkRanges<T extends Checked>(ranges: Ranges<T>, table: FoundTable, row: T): T {
  let checked = row;
  for (const [id, bounds] of ranges) {
    const amount = row[id] as Amount | null;
    if (amount === null || isWithin(amount.value, bounds)) continue;
    const spec = columnsOf(table.kind)[id];
    const header = table.columns.get(id)?.header ?? spec?.name ?? id;
    const { value } = amount;
    const unit = amount.unit?.text ?? null;
    const bound = Number.isFinite(value) ? bounds.find((one) => !isKept(one, value)) : undefined;
    const fact = factOf(
      'value-out-of-range',
      'warning',
      bound
        ? { kind: 'bound', header, value, unit, bound }
        : { kind: 'not finite', header, cell: String(value), unit },
    );
    checked = { ...checked, [id]: null, diagnostics: [...checked.diagnostics, { ...fact, column: id }] };
  }
  return checked;
}

function isWithin(value: number, bounds: readonly Bound[]): boolean {
  return Number.isFinite(value) && bounds.every((bound) => isKept(bound, value));
}

function isKept({ kind, than }: Bound, value: number): boolean {
  switch (kind) {
    case 'above':
      return value > than;
    case 'at least':
      return value >= than;
    case 'at most':
      return value <= than;
  }
}
