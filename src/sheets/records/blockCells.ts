import { finite } from '../cells.ts';
import { decimalsFor } from '../style/significant.ts';
import type { ModelCell, ModelValue } from '../model.ts';
import { type BlockFormulas, blockFormulas } from './blockFormulas.ts';
import type { FormulaList } from '../formulaList.ts';
import type { BlockPlaces } from './places.ts';
import type { ShownRecord } from './shown.ts';
import { workedOut, type WorkedOut } from './workedOut.ts';

/** A block on its way to the sheet. */
export interface Block {
  readonly record: ShownRecord;
  readonly places: BlockPlaces;
  readonly worked: WorkedOut;
  /** Styles of gaps, deviations and sensitivities. */
  readonly styles: { readonly gap: string; readonly deviation: string; readonly sensitivity: string };
  /** A number with its formula; the number alone, or nothing, where the method gives none. */
  readonly calculated: (
    value: ModelValue,
    style: string,
    formula: keyof BlockFormulas,
  ) => ModelCell | undefined;
  /** The same with a formula of one row only. */
  readonly spelled: (value: number, style: string, formula: string) => ModelCell | undefined;
}

export function blockOf(record: ShownRecord, places: BlockPlaces, formulas: FormulaList): Block {
  const own = blockFormulas(places, record.fitted);
  const spelled = (value: ModelValue, style: string, formula: string): ModelCell | undefined => {
    const usable = typeof value === 'number' ? finite(value) : value;
    return usable === null ? undefined : { value: usable, style, formula: formulas.place(formula) };
  };
  const widest = Math.max(...record.gaps.map(Math.abs));
  return {
    record,
    places,
    worked: workedOut(record),
    styles: {
      gap: `level${decimalsFor(widest)}`,
      deviation: `signed${decimalsFor(record.deviation)}`,
      sensitivity: `level${decimalsFor(record.rated ?? 200)}`,
    },
    calculated: (value, style, formula) => spelled(value, style, own[formula]),
    spelled,
  };
}
