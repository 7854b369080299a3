import type { Dimension } from '../../../units/unit.ts';
import type { Concept } from './concepts.ts';

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

/** A column of the channel list or the monitor settings: all that is said of its meaning anywhere. */
export interface TableColumn extends ColumnSpec {
  /**
   * It can turn a danger late or keep it from acting: where it may stand unread, the audit of a danger can't be trusted.
   */
  readonly protective?: true;
  /** How a field of a workbook that follows no standard is understood as this; by its standard header alone where left out. */
  readonly understood?: Understood;
  /** What it means, in a sentence, for someone who is asked about it. */
  readonly help: string;
  /** What a template says of it. */
  readonly entry: ColumnEntry;
}

/** What a meaning is for the reader's judgement of evidence. */
export type Matter = 'sensitivity' | 'setpoint' | 'scale' | 'quantity' | 'text' | 'tag';

/** Sizes that are usual in a unit: numbers far outside them contradict the unit. */
export interface UsualSize {
  readonly unit: string;
  readonly from: number;
  readonly to: number;
}

/** The words for a meaning, how large it usually is, and what it is not. */
export interface Understood {
  readonly matter: Matter;
  /** Concepts of a header that name it, all of one of the lists. */
  readonly named: readonly (readonly Concept[])[];
  /** Concepts with which a header means something else. */
  readonly not?: readonly Concept[];
  /** Absolute sizes, by unit; those of other units follow from them. */
  readonly sizes?: readonly UsualSize[];
  /** A name of its kind may be a bare number. */
  readonly numbered?: boolean;
  /** A channel can't be judged without it. */
  readonly needed?: boolean;
}

/** The units in which a template is kept. */
export type System = 'mil' | 'µm';

/** What may be typed into a cell: one of a few words, a number, or a date (as the day number a spreadsheet stores). */
export type Allowed =
  | { readonly words: readonly string[] }
  | { readonly above: number }
  | { readonly atLeast: number }
  | { readonly from: number; readonly to: number }
  | { readonly dateFrom: number };

/** What a template says about a column beyond its header. */
export interface ColumnEntry {
  /** One line for the person who fills it in. */
  readonly meaning: string;
  readonly allowed?: Allowed;
  /** The unit in the header's brackets, where the column's meaning does not name a usual one; of the template in mil. */
  readonly unit?: 'mil' | 'mV/mil';
  /** What an entry looks like, invented; by the units of the template where it hangs on them. */
  readonly sample: string | Readonly<Record<System, string>>;
  /** A value outside `allowed` is asked about, but may be kept. */
  readonly warnOnly?: true;
}
