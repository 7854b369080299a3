import { auditInSteps, type AuditedReport, type AuditOptions } from '../../../audit/audit.ts';
import type { Workbook } from '../../../cells/sheet.ts';
import type { Cancel, OnProgress } from '../../../hosts/port/port.ts';
import { inSlices } from './inSlices.ts';

/**
 * Audits a workbook in slices, so that the pane stays alive; `null` where it was cancelled between two of them.
 * @throws AuditRefused where the tables can't be told.
 */
export async function auditRun(
  workbook: Workbook,
  options: AuditOptions,
  onProgress: OnProgress,
  cancel: Cancel,
): Promise<AuditedReport | null> {
  return inSlices(auditInSteps(workbook, options), onProgress, cancel);
}
