import { auditInSteps } from '../audit/audit.ts';
import { finish } from '../audit/steps.ts';
import { parsePolicy } from '../audit/policy/policy.ts';
import { needsAction } from '../audit/report/summary.ts';
import type { Report } from '../audit/report/types.ts';
import { parseColumnMap } from '../audit/tables/columnMap.ts';
import type { Workbook } from '../cells/sheet.ts';
import { addSheetsTo } from '../hosts/file/write/addSheets.ts';
import { emptyWorkbook } from '../hosts/file/write/newWorkbook.ts';
import { nodeDeflater } from '../hosts/file/zip/nodeDeflater.ts';
import type { SheetModel } from '../sheets/model.ts';
import { resultSheets } from '../sheets/resultSheets.ts';
import { textTableSheet } from '../sheets/textTable.ts';
import { checkWritable, isOwnReport, readJson, writeAll, type Output } from './files.ts';
import { readInput } from './input.ts';
import { help, parseOptions, type Options } from './options.ts';
import { UsageRefused } from './refused.ts';
import { reportJson } from './reportJson.ts';
import { summaryText } from './summary.ts';
import { plain, progressOn, type Progress } from './terminal.ts';

/**
 * The audit command: reads, audits, writes what was asked for. Returns the exit code: 0 audited, 1 audited and
 * `--strict` found something.
 * @throws UsageRefused, FileRefused, AuditRefused with one line for a person; nothing is written then.
 */
export function auditCommand(args: readonly string[]): number {
  const options = parseOptions(args);
  if (options.help) {
    process.stdout.write(help);
    return 0;
  }
  checkOutputs(options);
  const policy = options.policy === undefined ? {} : { policy: parsePolicy(readJson(options.policy)) };
  const map = options.map === undefined ? {} : { map: parseColumnMap(readJson(options.map)) };

  const progress = progressOn(process.stderr);
  try {
    const { report, source } = readAndAudit(options, { ...policy, ...map }, progress);
    const said = writeOutputs(options, source, report, progress);
    progress.clear();
    if (options.json !== '-') process.stdout.write(`${summaryText(report)}${said}`);
    return options.strict && needsAction(report.channels, report.groups) ? 1 : 0;
  } finally {
    progress.clear();
  }
}

function checkOutputs({ inputs, out, json, force }: Options): void {
  if (inputs.length === 0) throw new UsageRefused('Name a workbook or the text tables to audit. See --help.');
  if (out !== undefined) {
    const wanted = /\.xlsm$/iu.test(inputs[0] ?? '') ? '.xlsm' : '.xlsx';
    if (!out.toLowerCase().endsWith(wanted)) {
      throw new UsageRefused(`--out ${out}: a copy of ${inputs[0] ?? ''} must be named ${wanted}.`);
    }
    checkWritable(out, inputs, force);
  }
  if (json !== undefined && json !== '-') checkWritable(json, inputs, force || isOwnReport(json));
}

/** What a copy with results is made from: the file as it was, or text tables as sheets of their own. */
interface CopySource {
  readonly original: Uint8Array;
  readonly ownSheets: readonly SheetModel[];
}

function readAndAudit(
  { inputs, out }: Options,
  options: Parameters<typeof auditInSteps>[1],
  progress: Progress,
): { report: Report; source: CopySource } {
  const { workbook, original } = readInput(inputs, (part) => {
    progress.show('reading', part);
  });
  const report = runAudit(workbook, options, progress);
  if (original) return { report, source: { original, ownSheets: [] } };
  const ownSheets = out === undefined ? [] : workbook.sheets.map(textTableSheet);
  return { report, source: { original: emptyWorkbook(), ownSheets } };
}

function runAudit(
  workbook: Workbook,
  options: Parameters<typeof auditInSteps>[1],
  progress: Progress,
): Report {
  return finish(auditInSteps(workbook, options), (part) => {
    progress.show('auditing', part);
  });
}

/** Writes what was asked for; what to say of it. The workbook's cells are no longer held while its copy is written. */
function writeOutputs({ out, json }: Options, input: CopySource, report: Report, progress: Progress): string {
  const outputs: Output[] = [];
  const said: string[] = [];
  if (out !== undefined) {
    outputs.push({ given: out, write: (put) => said.push(...writeCopy(out, input, report, progress, put)) });
  }
  if (json !== undefined && json !== '-') {
    const write: Output['write'] = (put) => {
      for (const piece of reportJson(report)) put(piece);
      said.push(`Written: ${json}.`);
    };
    outputs.push({ given: json, write });
  }
  writeAll(outputs);
  if (json === '-') for (const piece of reportJson(report)) process.stdout.write(piece);
  return said.length > 0 ? `\n${said.join('\n')}\n` : '';
}

function writeCopy(
  out: string,
  { original, ownSheets }: CopySource,
  report: Report,
  progress: Progress,
  put: (piece: Uint8Array) => void,
): string[] {
  const results = resultSheets(report);
  const { sheetNames, notes } = addSheetsTo(original, [...ownSheets, ...results], put, {
    deflater: nodeDeflater,
    onProgress: (done, total) => {
      progress.show('writing', done / total);
    },
  });
  const names = sheetNames
    .slice(-results.length)
    .map(({ wanted, given }) =>
      wanted === given ? `'${given}'` : `'${given}' (there is a '${wanted}' already)`,
    );
  return [
    `Written: ${out}, with the sheets ${plain(names.join(', '))}.`,
    ...notes.map((note) => plain(note)),
  ];
}
