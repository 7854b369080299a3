import { auditInSteps, type AuditOptions } from '../../audit/audit.ts';
import { AuditRefused } from '../../audit/model/refused.ts';
import { earlierReport } from '../../audit/since/fromEarlierReport.ts';
import { snapshotOf } from '../../audit/since/fromReport.ts';
import type { Snapshot } from '../../audit/model/snapshot.ts';
import { finish } from '../../audit/model/steps.ts';
import { earlierSheets } from '../../sheets/earlier/earlierSheets.ts';
import { earlierSnapshot } from '../../sheets/earlier/earlierSnapshot.ts';
import { readJson } from '../files.ts';
import type { Progress } from '../terminal.ts';
import { readInput } from './input.ts';

/**
 * The earlier audit that `--since` names: a workbook's tables audited anew with the same policy and map, or, where it holds
 * none that can be told, its latest sheet of results; or a report that was kept as JSON.
 * @throws UsageRefused, FileRefused, AuditRefused where it can't be read, or holds neither; the message names the file.
 */
export function earlierAudit(path: string, options: AuditOptions, progress: Progress): Snapshot {
  if (path.toLowerCase().endsWith('.json')) return keptReport(path);
  const { workbook } = readInput([path], (part) => {
    progress.show('reading the earlier workbook', part);
  });
  try {
    const report = finish(auditInSteps(workbook, options), (part) => {
      progress.show('auditing the earlier workbook', part);
    });
    return snapshotOf(report);
  } catch (error) {
    if (!(error instanceof AuditRefused)) throw error;
    const [latest] = earlierSheets(workbook);
    if (latest) return earlierSnapshot(latest);
    throw new AuditRefused(`--since ${path}: ${error.message} It holds no sheet of earlier results either.`);
  }
}

function keptReport(path: string): Snapshot {
  try {
    return earlierReport(readJson(path));
  } catch (error) {
    if (!(error instanceof AuditRefused)) throw error;
    throw new AuditRefused(`--since ${path}: ${error.message}`);
  }
}
