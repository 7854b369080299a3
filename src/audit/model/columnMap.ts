import * as z from 'zod';
import { AuditRefused } from './refused.ts';

const tableMap = z.strictObject({
  /** Sheet on which the table stands. */
  sheet: z.string().optional(),
  /** Row of its headers, as the spreadsheet counts. */
  headerRow: z.int().min(1).max(1_048_576).optional(),
  /** Standard header → column letters or the header as it stands; `null` leaves the column out. */
  columns: z.record(z.string(), z.string().nullable()).optional(),
  /** Standard header → unit of the whole column. */
  units: z.record(z.string(), z.string()).optional(),
});

const notOfAudit = z.strictObject({
  sheet: z.string(),
  column: z.string().optional(),
  row: z.int().min(1).max(1_048_576).optional(),
});

/** What the user said about the tables: overrides what the headers would mean by themselves. */
export const columnMapSchema = z.strictObject({
  channels: tableMap.optional(),
  settings: tableMap.optional(),
  /**
   * What looks like a part of the audit and is none: a column by its letters or its header, what begins in a row, or without
   * either a whole sheet.
   */
  notOfAudit: z.array(notOfAudit).optional(),
});
export type ColumnMap = z.infer<typeof columnMapSchema>;
export type TableMap = z.infer<typeof tableMap>;
export type NotOfAudit = z.infer<typeof notOfAudit>;

/**
 * A column map from parsed JSON.
 * @throws AuditRefused naming the entry that is wrong.
 */
export function parseColumnMap(json: unknown): ColumnMap {
  const parsed = columnMapSchema.safeParse(json);
  if (parsed.success) return parsed.data;
  const [issue] = parsed.error.issues;
  throw new AuditRefused(
    `Column map, at ${issue?.path.join('.') || 'its top level'}: ${issue?.message ?? 'not understood'}.`,
  );
}
