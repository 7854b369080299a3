import { parseColumnMap } from '../../audit/model/columnMap.ts';
import { auditInSteps, type AuditOptions } from '../../audit/audit.ts';
import { parsePolicy } from '../../audit/model/policy.ts';
import type { Report } from '../../audit/model/report.ts';
import { finish } from '../../audit/model/steps.ts';
import { emptyWorkbook } from '../../hosts/file/write/newWorkbook.ts';
import type { SheetModel } from '../../sheets/model.ts';
import { textTableSheet } from '../../sheets/textTable.ts';
import { readJson } from '../files.ts';
import type { Progress } from '../terminal.ts';
import { readInput } from './input.ts';
import type { Options } from './options.ts';

/** What a copy is made from: the file as it was, or text tables as sheets of their own. */
export interface CopySource {
  readonly original: Uint8Array;
  readonly ownSheets: readonly SheetModel[];
}

/** An audited input. The workbook's cells are let go, so that they are not held while a copy is written. */
export interface AuditedInput {
  readonly report: Report;
  readonly source: CopySource;
}

/**
 * Policy and column map that the command line names.
 * @throws UsageRefused, AuditRefused where one can't be read.
 */
export function auditOptions({ policy, map }: Options): AuditOptions {
  return {
    ...(policy === undefined ? {} : { policy: parsePolicy(readJson(policy)) }),
    ...(map === undefined ? {} : { map: parseColumnMap(readJson(map)) }),
  };
}

/**
 * Reads and audits one workbook, or text tables.
 * @throws UsageRefused, FileRefused, AuditRefused where an input can't be read or its tables can't be told.
 */
export function auditInput(
  inputs: readonly string[],
  options: AuditOptions,
  progress: Progress,
): AuditedInput {
  const { workbook, original } = readInput(inputs, (part) => {
    progress.show('reading', part);
  });
  const report = finish(auditInSteps(workbook, options), (part) => {
    progress.show('auditing', part);
  });
  if (original) return { report, source: { original, ownSheets: [] } };
  return { report, source: { original: emptyWorkbook(), ownSheets: workbook.sheets.map(textTableSheet) } };
}
