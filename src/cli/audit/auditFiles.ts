import process from 'node:process';
import { isCritical } from '../../audit/advise/summary.ts';
import type { ColumnMap } from '../../audit/model/columnMap.ts';
import type { Report } from '../../audit/model/report.ts';
import type { Understanding } from '../../audit/read/understand/understand.ts';
import { styleFor } from '../style.ts';
import { unlessStopped } from '../stop.ts';
import { progressOn, type Progress } from '../terminal.ts';
import { attempt, understood, type Attempt } from './asking/attempt.ts';
import { conversation } from './asking/conversation.ts';
import { mayAsk } from './asking/mayAsk.ts';
import { openText } from './asking/openText.ts';
import { auditOptions, readToAudit } from './auditInput.ts';
import type { Options } from './options.ts';
import { checkOutputs, leftBehindThere, writeOutputs } from './outputs/outputs.ts';
import { mapJson, proposalOf, writeProposal } from './outputs/proposal.ts';
import { isShareAlone, shareAlone } from './outputs/sharedCopy.ts';
import { reportJson } from './reportJson.ts';
import { trendFile } from './trendFile.ts';
import { summaryText } from './summary.ts';
import { auditInSteps, type AuditOptions } from '../../audit/audit.ts';
import { AuditRefused } from '../../audit/model/refused.ts';
import { earlierReport } from '../../audit/since/fromEarlierReport.ts';
import { snapshotOf } from '../../audit/since/fromReport.ts';
import type { Snapshot } from '../../audit/model/snapshot.ts';
import { finish } from '../../audit/model/steps.ts';
import { earlierSheets } from '../../sheets/earlier/earlierSheets.ts';
import { earlierSnapshot } from '../../sheets/earlier/earlierSnapshot.ts';
import { readJson } from '../files.ts';
import { readInput } from './input.ts';

/**
 * Audits the workbook or text tables that the command line names, writes what it asks for, and says how things stand.
 * Returns the exit code: 0 audited, 1 where `--strict` found something, 2 where a person has to be asked first.
 * @throws UsageRefused, FileRefused, AuditRefused with one line for a person; nothing is written then.
 */
export async function auditFiles(given: Options): Promise<number> {
  checkOutputs(given);
  const left = leftBehindThere(given);
  if (left !== undefined) process.stderr.write(`${left}\n`);
  if (isShareAlone(given)) {
    const said = await unlessStopped((signal) => shareAlone(given, signal));
    process.stdout.write(`${said.join('\n')}\n`);
    return 0;
  }
  const progress = progressOn(process.stderr);
  try {
    const { audited, open, proposal, options } = await tried(given, progress);
    if (!audited) {
      await unlessStopped((signal) => writeProposal(options, proposal, signal));
      progress.clear();
      if (options.propose === '-' && proposal) process.stdout.write(mapJson(proposal));
      process.stderr.write(`${linesAbout(open, options).join('\n')}\n`);
      return 2;
    }
    const said = await unlessStopped((signal) =>
      writeOutputs(options, { ...audited, proposal }, progress, signal),
    );
    progress.clear();
    print(options, audited.report, proposal, [...said, ...linesAbout(open, options)]);
    return options.strict && isCritical(audited.report) ? 1 : 0;
  } finally {
    progress.clear();
  }
}

/** What came of an audit, and what is to be kept of what was proposed or answered; the options say where. */
interface Tried extends Attempt {
  readonly options: Options;
  readonly proposal: ColumnMap | null;
}

/** Audits, with the answers of a person where one is at a terminal. */
async function tried(options: Options, progress: Progress): Promise<Tried> {
  const map = auditOptions(options);
  const before = options.since === undefined ? undefined : earlierAudit(options.since, map, progress);
  const replay = trendFile(options);
  const settings = { ...map, ...(before ? { before } : {}), ...(replay ? { replay } : {}) };
  const input = readToAudit(options.inputs, progress);
  if (mayAsk(options, process)) {
    const asked = await unlessStopped((signal) => conversation(input, options, settings, progress, signal));
    const { kept } = asked;
    return kept
      ? { ...asked, options: { ...options, propose: kept.file }, proposal: kept.map }
      : { ...asked, options, proposal: null };
  }
  const found = attempt(input, settings, progress);
  const wanted = options.propose === undefined ? null : (found.open ?? understood(input, settings));
  return { ...found, options, proposal: wanted && proposalOf(wanted) };
}

function linesAbout(open: Understanding | null, { propose }: Options): readonly string[] {
  return open ? openText(open, propose === '-' ? undefined : propose) : [];
}

function print(options: Options, report: Report, proposal: ColumnMap | null, said: readonly string[]): void {
  if (options.json === '-') {
    for (const piece of reportJson(report)) process.stdout.write(piece);
    return;
  }
  if (options.propose === '-' && proposal) {
    process.stdout.write(mapJson(proposal));
    return;
  }
  const style = styleFor(process.stdout, process.env);
  const text = summaryText(report, { details: options.details, style });
  process.stdout.write(`${text}${said.length > 0 ? `\n${said.join('\n')}\n` : ''}`);
}

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
