import { isCritical } from '../../audit/advise/summary.ts';
import { fleetCommand } from '../fleet/fleetCommand.ts';
import { isFolder } from '../fleet/folder.ts';
import { UsageRefused } from '../refused.ts';
import { styleFor } from '../style.ts';
import { unlessStopped } from '../stop.ts';
import { progressOn } from '../terminal.ts';
import { auditInput, auditOptions } from './auditInput.ts';
import { earlierAudit } from './earlier.ts';
import { help } from './help.ts';
import { parseOptions, type Options } from './options.ts';
import { checkOutputs, leftBehindThere, writeOutputs } from './outputs/outputs.ts';
import { isShareAlone, shareAlone } from './outputs/sharedCopy.ts';
import { reportJson } from './reportJson.ts';
import { summaryText } from './summary.ts';
import { verifyFile } from './verify/verifyFile.ts';

/**
 * The audit command: reads, audits, writes what was asked for. Returns the exit code: 0 audited, 1 audited and
 * `--strict` found something, or `--verify` found edits; for a folder, 2 as well where a workbook could not be audited.
 * @throws UsageRefused, FileRefused, AuditRefused with one line for a person; nothing is written then.
 */
export async function auditCommand(args: readonly string[]): Promise<number> {
  const options = parseOptions(args);
  if (options.help) {
    process.stdout.write(help);
    return 0;
  }
  if (options.inputs.length === 0) {
    throw new UsageRefused('Name a workbook or the text tables to audit. See --help.');
  }
  if (options.verify) return verifyFile(options);
  if (options.inputs.some(isFolder)) return fleetCommand(options);
  if (options.timeout !== undefined) {
    throw new UsageRefused('--timeout is for a folder of workbooks. Leave it out. See --help.');
  }
  return auditFiles(options);
}

/** Audits what the command line names, writes what it asks for, and says how things stand. */
async function auditFiles(options: Options): Promise<number> {
  checkOutputs(options);
  const left = leftBehindThere(options);
  if (left !== undefined) process.stderr.write(`${left}\n`);
  if (isShareAlone(options)) {
    const said = await unlessStopped((signal) => shareAlone(options, signal));
    process.stdout.write(`${said.join('\n')}\n`);
    return 0;
  }
  const settings = auditOptions(options);
  const progress = progressOn(process.stderr);
  try {
    const before = options.since === undefined ? undefined : earlierAudit(options.since, settings, progress);
    const audited = auditInput(options.inputs, before ? { ...settings, before } : settings, progress);
    const { report } = audited;
    const said = await unlessStopped((signal) => writeOutputs(options, audited, progress, signal));
    progress.clear();
    if (options.json === '-') {
      for (const piece of reportJson(report)) process.stdout.write(piece);
    } else {
      const text = summaryText(report, {
        details: options.details,
        style: styleFor(process.stdout, process.env),
      });
      process.stdout.write(`${text}${said.length > 0 ? `\n${said.join('\n')}\n` : ''}`);
    }
    return options.strict && isCritical(report) ? 1 : 0;
  } finally {
    progress.clear();
  }
}
