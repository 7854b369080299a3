/** The formulas of a sheet, each once, numbered in the order in which they came. */
export interface FormulaList {
  /** Place of a formula; it is added where it is new. */
  readonly place: (formula: string) => number;
  readonly all: readonly string[];
}

/** A list that begins with the formulas known beforehand. */
export function formulaList(known: readonly string[] = []): FormulaList {
  const all: string[] = [...known];
  const places = new Map(all.map((formula, index) => [formula, index]));
  return {
    all,
    place: (formula) => {
      const known = places.get(formula);
      if (known !== undefined) return known;
      places.set(formula, all.length);
      all.push(formula);
      return all.length - 1;
    },
  };
}
