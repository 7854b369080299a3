import { optionList } from '../audit/optionList.ts';
import type { Options } from '../audit/options.ts';
import { UsageRefused } from '../refused.ts';
import { usualMinutes } from './limits.ts';

/** Options that mean something for a folder. */
const known: ReadonlySet<string> = new Set([
  'out',
  'json',
  'policy',
  'map',
  'propose',
  'force',
  'strict',
  'timeout',
  'help',
] satisfies (keyof typeof optionList)[]);

/** A day: longer than any audit. */
const mostMinutes = 1440;

/**
 * The folder and the minutes for each of its workbooks.
 * @throws UsageRefused where there is more than a folder, an option that is for one workbook, or a time that is none.
 */
export function fleetOptions(options: Options): { readonly folder: string; readonly minutes: number } {
  const [folder = '', ...more] = options.inputs;
  if (more.length > 0)
    throw new UsageRefused('Name one folder and nothing else, or the files themselves. See --help.');
  const given = Object.keys(optionList) as (keyof typeof optionList)[];
  const odd = given.find(
    (name) => !known.has(name) && options[name] !== undefined && options[name] !== false,
  );
  if (odd !== undefined) {
    throw new UsageRefused(
      `--${odd} is for one workbook, not for a folder. Leave it out, or name the workbook.`,
    );
  }
  return { folder, minutes: minutesOf(options.timeout) };
}

function minutesOf(given: string | undefined): number {
  if (given === undefined) return usualMinutes;
  const minutes = /^(?:\d+|\d*\.\d+)$/u.test(given.trim()) ? Number(given) : NaN;
  if (minutes > 0 && minutes <= mostMinutes) return minutes;
  throw new UsageRefused(
    `--timeout ${given}: give minutes above 0 and up to ${mostMinutes}, as in --timeout 30.`,
  );
}
