import type { AuditOptions } from '../../audit/audit.ts';
import type { Found } from '../../sheets/fleet/types.ts';

/** What a process of its own is to do: audit one workbook. Paths are whole. */
export interface Job {
  /** Its name in the folder. */
  readonly file: string;
  readonly path: string;
  readonly options: AuditOptions;
  /** Where the copy with result sheets goes. */
  readonly copy: string | undefined;
  /** Names its unfinished files, so that they can be cleared away where its process can't. */
  readonly token: string;
  /** Where the report goes, as JSON. */
  readonly report: string | undefined;
}

/** What came of it. */
export type Answer =
  | { readonly found: Found; readonly notes: readonly string[]; readonly refused: null }
  | { readonly found: null; readonly refused: string };
