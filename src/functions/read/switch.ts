import { type SwitchArgument, label } from '../declare/argument.ts';
import { refused } from '../functionError.ts';
import { blank, errorIn, shown } from './cellKind.ts';
import type { Reader } from './reader.ts';

/** Reads whether something holds: TRUE or FALSE, 1 or 0, or one of the argument's words, in any case. */
export function switchReader(argument: SwitchArgument): Reader<boolean> {
  const { on, off, otherwise } = argument;
  const cure = `enter TRUE or FALSE.`;
  const known = new Map<unknown, boolean>([
    [1, true],
    [0, false],
    [true, true],
    [false, false],
    ...['true', '1', ...on].map((word) => [word, true] as const),
    ...['false', '0', ...off].map((word) => [word, false] as const),
  ]);

  return (cell) => {
    if (blank(cell)) return otherwise;
    const found = known.get(typeof cell === 'string' ? cell.trim().toLowerCase() : cell);
    return found ?? errorIn(cell) ?? refused(`${label(argument)} is ${shown(cell)}: ${cure}`);
  };
}
