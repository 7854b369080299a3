/** Formulas and values of an area, row by row. */
export interface Formulas {
  readonly formulas: readonly (readonly unknown[])[];
  readonly values: readonly (readonly unknown[])[];
}

/** Asks for them; `null` where the area is larger than Excel hands over. */
export function askForFormulas(range: Excel.Range): () => Formulas | null {
  range.load('formulas,values');
  return () => {
    const formulas = range.formulas as Formulas['formulas'] | null;
    const values = range.values as Formulas['values'] | null;
    return formulas === null || values === null ? null : { formulas, values };
  };
}
