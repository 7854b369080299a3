import { formulaTokens } from '../hosts/formats/formulaTokens.ts';
import { callsOurs } from '../hosts/formats/ourFormula.ts';
import { shownFormula } from '../hosts/formats/storedFormula.ts';

/** Tells formulas that work with our functions alone: they call one, or use a name that does. */
export interface UsesOfFunctions {
  /** By the formula in the form files store, or as people type it. */
  readonly uses: (formula: string) => boolean;
  /** Whether it does so by a name. */
  readonly byName: (formula: string) => boolean;
}

/** Looks through a workbook's names, `refersTo` as files store it; those that use such a name count as well. */
export function usesOfFunctions(
  names: readonly { readonly name: string; readonly refersTo: string }[],
): UsesOfFunctions {
  const ours = new Set<string>();
  const byName = (formula: string): boolean =>
    ours.size > 0 &&
    formulaTokens(formula).some(({ kind, text }) => kind === 'word' && ours.has(text.toLowerCase()));
  const uses = (formula: string): boolean => callsOurs(shownFormula(formula)) || byName(formula);
  for (let before = -1; before < ours.size;) {
    before = ours.size;
    for (const { name, refersTo } of names) if (uses(refersTo)) ours.add(name.toLowerCase());
  }
  return { uses, byName };
}
