import { parseArgs } from 'node:util';
import { UsageRefused } from '../refused.ts';
import { optionList, type Option } from './optionList.ts';

type Given = {
  readonly [Name in keyof typeof optionList]: (typeof optionList)[Name]['type'] extends 'boolean'
    ? boolean
    : string | undefined;
};

/** What stands on the command line; an option that takes a value is `undefined` where it is not given. */
export interface Options extends Given {
  readonly inputs: readonly string[];
}

/**
 * The options of the audit command.
 * @throws UsageRefused where an option is unknown, or lacks its value or has an empty one.
 */
export function parseOptions(args: readonly string[]): Options {
  const { values, positionals } = parse(args);
  const empty = Object.keys(values).find((name) => values[name] === '');
  if (empty !== undefined) throw new UsageRefused(`--${empty} has nothing behind it. See --help.`);
  const given = Object.entries<Option>(optionList).map(([name, { type }]) => [
    name,
    values[name] ?? (type === 'boolean' ? false : undefined),
  ]);
  return { ...(Object.fromEntries(given) as Given), inputs: positionals };
}

function parse(args: readonly string[]) {
  try {
    const options: Record<string, Option> = optionList;
    return parseArgs({ args: joinDash(args), allowPositionals: true, options });
  } catch (error) {
    const why = error instanceof Error ? (error.message.split(/[.\n]/u)[0] ?? '') : '';
    throw new UsageRefused(`${why}. See --help.`);
  }
}

/** Options whose value may be `-`, for standard output. */
const printed = new Set(['--json', '--propose']);

/** `--json -` as one word, which the parser would otherwise take for a missing value. */
function joinDash(args: readonly string[]): string[] {
  const joined: string[] = [];
  for (let index = 0; index < args.length; index++) {
    const arg = args[index] ?? '';
    if (printed.has(arg) && args[index + 1] === '-') {
      joined.push(`${arg}=-`);
      index++;
    } else joined.push(arg);
  }
  return joined;
}
