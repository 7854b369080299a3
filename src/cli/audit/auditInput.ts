import { misplacedText } from '../../audit/advise/questions/misplacedText.ts';
import { auditInSteps, type AuditedReport, type AuditOptions } from '../../audit/audit.ts';
import { parseColumnMap } from '../../audit/model/columnMap.ts';
import { defaultPolicy, parsePolicy } from '../../audit/model/policy.ts';
import { AuditRefused } from '../../audit/model/refused.ts';
import { finish } from '../../audit/model/steps.ts';
import { misplacedIn } from '../../audit/read/mapPlaces.ts';
import { understand } from '../../audit/read/understand/understand.ts';
import { emptyWorkbook } from '../../hosts/file/write/newWorkbook.ts';
import type { SheetModel } from '../../sheets/model.ts';
import { textTableSheet } from '../../sheets/textTable.ts';
import { readJson } from '../files.ts';
import type { Progress } from '../terminal.ts';
import { readInput, type Input } from './input.ts';
import type { Options } from './options.ts';
import { replayPolicy } from './trendFile.ts';

/** What a copy is made from: the file as it was, or text tables as sheets of their own. */
export interface CopySource {
  readonly original: Uint8Array;
  readonly ownSheets: readonly SheetModel[];
}

/** An audited input. The workbook's cells are let go, so that they are not held while a copy is written. */
export interface AuditedInput {
  readonly report: AuditedReport;
  readonly source: CopySource;
}

/**
 * Policy and column map that the command line names.
 * @throws UsageRefused, AuditRefused where one can't be read.
 */
export function auditOptions(options: Options): AuditOptions {
  const { policy, map } = options;
  return {
    policy: replayPolicy(policy === undefined ? defaultPolicy : parsePolicy(readJson(policy)), options),
    ...(map === undefined ? {} : { map: parseColumnMap(readJson(map)) }),
  };
}

/**
 * Reads one workbook, or text tables.
 * @throws UsageRefused, FileRefused where an input can't be read.
 */
export function readToAudit(inputs: readonly string[], progress: Progress): Input {
  return readInput(inputs, (part) => {
    progress.show('reading', part);
  });
}

/**
 * Audits what was read.
 * @throws NotUnderstood where a person has to be asked first, AuditRefused where the map names what is not there.
 */
export function auditInput(input: Input, options: AuditOptions, progress: Progress): AuditedInput {
  const { workbook, original } = input;
  refuseMisplaced(input, options);
  const report = finish(auditInSteps(workbook, options), (part) => {
    progress.show('auditing', part);
  });
  if (original) return { report, source: { original, ownSheets: [] } };
  return { report, source: { original: emptyWorkbook(), ownSheets: workbook.sheets.map(textTableSheet) } };
}

/** What the workbook does not bear out of a map is said, not left aside: the map was written for what stands there. */
function refuseMisplaced({ workbook }: Input, { map }: AuditOptions): void {
  if (!map?.tables && !map?.cells) return;
  const { tables } = finish(understand(workbook, map));
  const [first, ...more] = misplacedIn(map, tables, workbook);
  if (first) throw new AuditRefused(misplacedText([first, ...more]));
}
