import { type ChoiceArgument, label } from '../declare/argument.ts';
import { refused } from '../functionError.ts';
import { blank, errorIn, shown } from './cellKind.ts';
import type { Reader } from './reader.ts';

/** Reads one of a few texts, in any case and with spaces about it. */
export function choiceReader(argument: ChoiceArgument): Reader<string> {
  const { choices, otherwise } = argument;
  const name = label(argument);
  // Quotation marks of more than three would make the message too long.
  const few = choices.length <= 3;
  const cure = few
    ? `enter ${choices.map((choice) => `"${choice}"`).join(' or ')}.`
    : `enter ${choices.slice(0, -1).join(', ')} or ${choices.at(-1) ?? ''}.`;
  const known = new Map(choices.map((choice) => [choice.toLowerCase(), choice]));

  return (cell) => {
    if (typeof cell === 'string') {
      const found = known.get(cell.trim().toLowerCase());
      if (found !== undefined) return found;
    }
    if (blank(cell)) return otherwise ?? refused(`${name} is blank: ${cure}`);
    if (cell === 0) return refused(`${name} is zero or blank: ${cure}`);
    return errorIn(cell) ?? refused(`${name} is ${shown(cell)}: ${cure}`);
  };
}
