import type { Dimension } from '../../../units/unit.ts';

export type TableKind = 'channels' | 'settings';

/** What a column's cells are: free text, a number with a unit, one of a few words, yes/no, or a date. */
export type Holds = 'text' | 'number' | 'choice' | 'flag' | 'date';

export interface ColumnSpec {
  /** The column's standard header, which is also its name in messages and in a column map. */
  readonly name: string;
  /** Other headers people write for the same thing; of texts and choices used only where no column has the standard one. */
  readonly also?: readonly string[];
  readonly required?: true;
  readonly holds: Holds;
  /** Dimensions a number of this column can have; empty for a pure number. */
  readonly dimensions?: readonly Dimension[];
  /** Unit that holds where neither the header nor a unit column names one; stated by the column's meaning. */
  readonly usualUnit?: string;
}
