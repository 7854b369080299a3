import { auditInSteps, type AuditOptions } from '../../../audit/audit.ts';
import type { Report } from '../../../audit/report/types.ts';
import type { Workbook } from '../../../cells/sheet.ts';
import type { Cancel, OnProgress } from '../../../hosts/port/port.ts';

/** Milliseconds of work before the pane gets its turn; a step that takes longer still ends first. */
const slice = 30;

/** Lets the screen and the user have their turn; a message is not held back in a pane that lies in the background. */
function turn(): Promise<void> {
  return new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      resolve();
    };
    port2.postMessage(null);
  });
}

/**
 * Audits a workbook in slices, so that the pane stays alive; `null` where it was cancelled between two of them.
 * @throws AuditRefused where the tables can't be told.
 */
export async function auditRun(
  workbook: Workbook,
  options: AuditOptions,
  onProgress: OnProgress,
  cancel: Cancel,
): Promise<Report | null> {
  const steps = auditInSteps(workbook, options);
  for (;;) {
    const until = performance.now() + slice;
    do {
      const step = steps.next();
      if (step.done) return step.value;
      onProgress(step.value);
    } while (performance.now() < until);
    await turn();
    if (cancel.cancelled) return null;
  }
}
