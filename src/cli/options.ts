import { parseArgs } from 'node:util';
import { UsageRefused } from './refused.ts';

export interface Options {
  readonly inputs: readonly string[];
  readonly out?: string;
  readonly json?: string;
  readonly policy?: string;
  readonly map?: string;
  readonly force: boolean;
  readonly strict: boolean;
  readonly help: boolean;
}

/**
 * The options of the audit command.
 * @throws UsageRefused where an option is unknown or lacks its value.
 */
export function parseOptions(args: readonly string[]): Options {
  const { values, positionals } = parse(args);
  const { out, json, policy, map, force = false, strict = false, help = false } = values;
  return {
    inputs: positionals,
    force,
    strict,
    help,
    ...(out === undefined ? {} : { out }),
    ...(json === undefined ? {} : { json }),
    ...(policy === undefined ? {} : { policy }),
    ...(map === undefined ? {} : { map }),
  };
}

function parse(args: readonly string[]) {
  try {
    return parseArgs({
      args: joinDash(args),
      allowPositionals: true,
      options: {
        out: { type: 'string' },
        json: { type: 'string' },
        policy: { type: 'string' },
        map: { type: 'string' },
        force: { type: 'boolean' },
        strict: { type: 'boolean' },
        help: { type: 'boolean', short: 'h' },
      },
    });
  } catch (error) {
    const why = error instanceof Error ? (error.message.split(/[.\n]/u)[0] ?? '') : '';
    throw new UsageRefused(`${why}. See --help.`);
  }
}

/** `--json -` as one word, which the parser would otherwise take for a missing value. */
function joinDash(args: readonly string[]): string[] {
  const joined: string[] = [];
  for (let index = 0; index < args.length; index++) {
    const arg = args[index] ?? '';
    if (arg === '--json' && args[index + 1] === '-') {
      joined.push('--json=-');
      index++;
    } else joined.push(arg);
  }
  return joined;
}

export const help = `Tripdrift audits machinery protection: where does each alert and danger setpoint really act?

  npm run -s audit -- IN.xlsx [options]
  npm run -s audit -- CHANNELS.csv MONITOR.csv [options]

IN.xlsx holds a channel list with measured sensitivities and the monitor settings, on any sheets; both are found by their
headers. It is never changed.

  --out OUT.xlsx    write a copy of the workbook with the result sheets behind its own
  --json FILE       write the report as JSON; - prints it, and nothing else, on standard output
  --policy P.json   what the site accepts, where it differs from the defaults
  --map M.json      which columns are meant, where the headers do not tell
  --force           let --out and --json replace a file that exists
  --strict          exit 1 when a danger is late, unreachable or undetermined, or a group cannot trip
  --help            this text

Exit code: 0 audited; 1 audited, and --strict found something; 2 bad usage or unreadable input (nothing is written).

Advisory only. Correct the measuring chain first; setpoints change only under the site's management of change.
`;
