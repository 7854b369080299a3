import { AuditRefused } from '../../audit/model/refused.ts';
import { HostRefused } from '../../hosts/port/port.ts';

/** An error in words for the user: refusals say it all themselves, anything else is named as unexpected. */
export function plainMessage(error: unknown): string {
  if (error instanceof AuditRefused || error instanceof HostRefused) return error.message;
  const said = error instanceof Error ? error.message : String(error);
  return `This did not work, and it is a fault of Tripdrift: ${said}. Your workbook is as it was; close the pane, open it again and retry.`;
}
