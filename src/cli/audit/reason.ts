import { AuditRefused } from '../../audit/model/refused.ts';
import { FileRefused } from '../../hosts/file/zip/refused.ts';
import { UsageRefused } from '../refused.ts';
import { plain } from '../terminal.ts';

/** Why an audit came to nothing, in one line for a person; what nobody expected is said to be that. */
export function reasonOf(error: unknown): string {
  const expected =
    error instanceof AuditRefused || error instanceof FileRefused || error instanceof UsageRefused;
  const message = error instanceof Error ? error.message : String(error);
  return plain(expected ? message : `The audit failed unexpectedly: ${message}`, 2000);
}
