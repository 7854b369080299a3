import { fleetCommand } from '../fleet/fleetCommand.ts';
import { isFolder } from '../fleet/folder.ts';
import { UsageRefused } from '../refused.ts';
import { auditFiles } from './auditFiles.ts';
import { help } from './help.ts';
import { parseOptions } from './options.ts';
import { verifyFile } from './verify/verifyFile.ts';

/**
 * The audit command: reads, audits, writes what was asked for. Returns the exit code: 0 audited, 1 audited and
 * `--strict` found something, or `--verify` found edits; 2 where a person has to be asked first; for a folder, 2 as well
 * where a workbook could not be audited.
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
