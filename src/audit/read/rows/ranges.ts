import type * as z from 'zod';
import type { FoundTable } from '../tables/found.ts';
import { columnsOf } from '../tables/vocabulary.ts';
import type { Complaint } from './complaint.ts';
import type { Amount } from './rowReader.ts';

interface Checked {
  readonly complaints: readonly Complaint[];
}

/**
 * Checks the amounts of a row against their physical ranges. An amount out of range becomes `null`, with a complaint
 * `value-out-of-range` that names it, so that no number is worked out from it.
 */
export function checkRanges<T extends Checked & object>(schema: z.ZodType, table: FoundTable, row: T): T {
  const result = schema.safeParse(row);
  if (result.success) return row;
  const repaired = { ...row } as Record<string, unknown>;
  const complaints = [...row.complaints];
  for (const issue of result.error.issues) {
    const id = String(issue.path[0]);
    const amount = row[id as keyof T] as Amount;
    const spec = columnsOf(table.kind)[id];
    const header = table.columns.get(id)?.header ?? spec?.name ?? id;
    const unit = amount.unit ? ` ${amount.unit.text}` : '';
    repaired[id] = null;
    complaints.push({
      rule: 'value-out-of-range',
      severity: 'warning',
      column: id,
      message: `'${header}': ${amount.value}${unit} is outside its physical range: it ${issue.message}. Check the entry.`,
    });
  }
  return { ...(repaired as unknown as T), complaints };
}
