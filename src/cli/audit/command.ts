import process from 'node:process';
import { type Command, commandAsTyped } from '../command.ts';
import { memberMark, serveFleet } from '../fleet/workerProcess.ts';
import { failed } from './reason.ts';
import { fleetCommand } from '../fleet/fleetCommand.ts';
import { isFolder } from '../fleet/folder.ts';
import { UsageRefused } from '../refused.ts';
import { auditFiles } from './auditFiles.ts';
import { unlessStopped } from '../stop.ts';
import { checkRemoving, writeWithoutResults } from './outputs/withoutResults.ts';
import { parseOptions } from './options.ts';
import { verifyFile } from './verifyFile.ts';
import { wrapped } from '../terminal.ts';
import { optionList, type Option } from './optionList.ts';

const width = 120;

/** Characters before the words of an option. */
const indent = 25;

const optionLines = Object.entries<Option>(optionList).map(([name, { value, words }]) => {
  const shown = `  --${name}${value === undefined ? '' : ` ${value}`} `.padEnd(indent);
  return wrapped(shown + words, width, ' '.repeat(indent));
});

const typed = commandAsTyped('audit');

/** What `--help` prints. */
const help = `Tripdrift audits machinery protection: where does each alert and danger setpoint really act?

  ${typed} IN.xlsx [options]
  ${typed} CHANNELS.csv MONITOR.csv [options]
  ${typed} FOLDER [options]
  ${typed} --verify OUT.xlsx

IN.xlsx holds a channel list with measured sensitivities and the monitor settings, on any sheets; both are found by their
headers. It is never changed. A FOLDER stands for every .xlsx and .xlsm directly in it, several at once; one that can't be
audited does not stop the others.

Your own workbook is read as you keep it: only what is certain is audited unasked. At a terminal you are asked the rest, each
question with its proposal; elsewhere, and with --json - or --propose, nobody is:

  ${typed} IN.xlsx --propose M.json     writes the proposal; check it
  ${typed} IN.xlsx --map M.json         audits with it

${optionLines.join('\n')}

Exit code: 0 audited; 1 audited, and --strict found something; 2 bad usage or unreadable input (nothing is written), a
workbook that needs answers first (nothing is written but the proposal), or workbooks of a FOLDER that could not be audited
(the others are, and are written). With --verify: 0 as the audit left it; 1 edited; 2 no results in it, or unreadable.

Advisory only. Correct the measuring chain first; setpoints change only under the site's management of change.
`;

/** `audit`; also what runs in the processes that audit the workbooks of a folder. */
export const auditProgram: Command = {
  run(args) {
    if (process.send === undefined || args[0] !== memberMark) return auditCommand(args);
    serveFleet();
    return 0;
  },
  failed,
};

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
  checkRemoving(options);
  if (options.verify) return verifyFile(options);
  if (options.inputs.some(isFolder)) {
    if (options.replay !== undefined)
      throw new UsageRefused('--replay goes with one workbook, not with a folder. See --help.');
    return fleetCommand(options);
  }
  if (options.timeout !== undefined) {
    throw new UsageRefused('--timeout is for a folder of workbooks. Leave it out. See --help.');
  }
  if (options['remove-results'] !== undefined) {
    const said = await unlessStopped((signal) => writeWithoutResults(options, signal));
    process.stdout.write(`${said.join('\n')}\n`);
    return 0;
  }
  return auditFiles(options);
}
