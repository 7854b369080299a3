import type { LengthHint } from '../../model/rules/settingsRules.ts';
import { rounded } from '../../model/wording.ts';

/** Roughly how much too long or too short a chain seems, and what to look at. */
export function lengthSentence({ nominal, off }: LengthHint): string {
  if (off === 'beyond')
    return 'By the rough rule that would be more than a fifth of the length: look for another fault than the cable.';
  const { least, most } = off;
  const percent = [least, most].map((part) => Math.round(Number((100 * Math.abs(part)).toPrecision(9))));
  const metres = [least, most].map((part) =>
    Math.max(0.1, Math.round(Number((10 * nominal * Math.abs(part)).toPrecision(9))) / 10),
  );
  const between = ([from = 0, to = 0]: readonly number[]): string =>
    from === to ? rounded(to) : `${rounded(from)} to ${rounded(to)}`;
  return `The readings suggest about ${between(percent)} % too ${most > 0 ? 'long' : 'short'}: near ${between(metres)} m of ${rounded(nominal)} m (a rough rule, no measurement). Read the length on the cable and the probe next.`;
}
