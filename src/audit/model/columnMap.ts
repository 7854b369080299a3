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

/** One field of a table: where it is, the header that stood there when it was said, its unit, and why it is proposed. */
const mappedField = z.strictObject({
  /** Column letters; in a table on its side the row's number; in forms the label. */
  at: z.string(),
  /** Where another header stands there by now, the answer does not hold any more. */
  header: z.string().optional(),
  unit: z.string().optional(),
  /** For people; not read. */
  evidence: z.array(z.string()).optional(),
});

/** What a person said about one of several tables. */
const mappedTable = z.strictObject({
  sheet: z.string(),
  /** First row of its headers; in a table on its side the first column's letters. */
  header: z.union([z.int().min(1).max(1_048_576), z.string()]),
  /** Last row (or column) of its headers, where there are several. */
  headerTo: z.union([z.int().min(1).max(1_048_576), z.string()]).optional(),
  lies: z.enum(['rows', 'columns', 'forms']).optional(),
  /** Letters of its first column, where several tables have their headers in one row. */
  from: z.string().optional(),
  /** Of two probes in one row, the one that this is about. */
  probe: z.string().optional(),
  /** Whether it is read. */
  use: z.boolean().optional(),
  series: z.enum(['as found', 'as left']).optional(),
  /** Machine of all its channels. */
  machine: z.string().optional(),
  /** Its channels are of the machine that the heading above them names. */
  machineFrom: z.literal('headings').optional(),
  /** Standard header → field; `null`: no field has this meaning. */
  columns: z.record(z.string(), z.union([z.string(), mappedField, z.null()])).optional(),
  /** Standard header → unit of the whole field. */
  units: z.record(z.string(), z.string()).optional(),
  /** Fields that are no quantities of the audit. */
  notOfAudit: z.array(z.string()).optional(),
  /** For people; not read. */
  evidence: z.array(z.string()).optional(),
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
  tables: z.array(mappedTable).optional(),
  /** Tags that are spelled in two ways: as written → as joined; one that is joined as itself is a channel of its own. */
  names: z.record(z.string(), z.string()).optional(),
  /** Numbers of cells that do not hold a plain one, by sheet and address: `Probes!C7`; `null`: it holds none that counts. */
  cells: z.record(z.string(), z.number().nullable()).optional(),
  /**
   * What looks like a part of the audit and is none: a column by its letters or its header, what begins in a row, or without
   * either a whole sheet.
   */
  notOfAudit: z.array(notOfAudit).optional(),
  /** Why names and cells are proposed. For people; not read. */
  evidence: z.array(z.string()).optional(),
});
export type ColumnMap = z.infer<typeof columnMapSchema>;
export type TableMap = z.infer<typeof tableMap>;
export type MappedTable = z.infer<typeof mappedTable>;
export type MappedField = z.infer<typeof mappedField>;
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
