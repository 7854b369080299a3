import type * as z from 'zod';
import type { FoundTable } from '../tables/found.ts';
import { columnsOf } from '../tables/vocabulary.ts';
import { factOf } from '../../model/findings.ts';
import type { Bound } from '../../model/rules/cellRules.ts';
import type { Diagnostic } from './diagnostic.ts';
import type { Amount } from './rowReader.ts';

interface Checked {
  readonly diagnostics: readonly Diagnostic[];
}

/**
 * Checks the amounts of a row against their physical ranges. An amount out of range becomes `null`, with
 * `value-out-of-range` told of it, so that no number is worked out from it.
 */
export function checkRanges<T extends Checked & object>(schema: z.ZodType, table: FoundTable, row: T): T {
  const result = schema.safeParse(row);
  if (result.success) return row;
  const repaired = { ...row } as Record<string, unknown>;
  const diagnostics = [...row.diagnostics];
  for (const issue of result.error.issues) {
    const id = String(issue.path[0]);
    const amount = row[id as keyof T] as Amount;
    const spec = columnsOf(table.kind)[id];
    const header = table.columns.get(id)?.header ?? spec?.name ?? id;
    const { value } = amount;
    const unit = amount.unit?.text ?? null;
    repaired[id] = null;
    const bound = boundOf(issue);
    const fact = factOf(
      'value-out-of-range',
      'warning',
      bound
        ? { kind: 'bound', header, value, unit, bound }
        : { kind: 'not finite', header, cell: String(value), unit },
    );
    diagnostics.push({ ...fact, column: id });
  }
  return { ...(repaired as unknown as T), diagnostics };
}

/** The bound that a number broke; `undefined` where it is none, or infinite. */
function boundOf(issue: z.core.$ZodIssue): Bound | undefined {
  if (issue.code === 'too_small')
    return { kind: issue.inclusive ? 'at least' : 'above', than: Number(issue.minimum) };
  if (issue.code === 'too_big') return { kind: 'at most', than: Number(issue.maximum) };
  return undefined;
}
