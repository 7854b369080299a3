import { wrapped } from '../terminal.ts';
import { typedAs } from '../typedAs.ts';
import { optionList, type Option } from './optionList.ts';

const width = 120;
/** Characters before the words of an option. */
const indent = 25;

const optionLines = Object.entries<Option>(optionList).map(([name, { value, words }]) => {
  const shown = `  --${name}${value === undefined ? '' : ` ${value}`}`.padEnd(indent);
  return wrapped(shown + words, width, ' '.repeat(indent));
});

const typed = typedAs('audit');

/** What `--help` prints. */
export const help = `Tripdrift audits machinery protection: where does each alert and danger setpoint really act?

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
