import type { Kind } from '../../../model/channel.ts';
import type { Amount } from '../../rows/rowReader.ts';
import type { Place } from '../blocks/block.ts';
import type { MeaningId } from '../meaning.ts';
import type { TableRead } from '../tables/tableRead.ts';
import type { PlacedNote } from './note.ts';

/** A value of a channel with its place. */
export interface ReadValue {
  readonly amount: Amount | null;
  readonly text: string;
  readonly day: number | null;
  readonly place: Place;
}

/** Why a channel, or a part of what it needs, is not settled. */
export type ReadingProblem =
  /** Several lines of one table have its tag and machine. */
  | { readonly is: 'twice'; readonly places: readonly Place[]; readonly meanings: readonly MeaningId[] }
  /** Several tables say something else of it. */
  | {
      readonly is: 'rival tables';
      readonly tables: readonly TableRead[];
      readonly places: readonly Place[];
      readonly meanings: readonly MeaningId[];
    }
  /** Its tag stands on several machines, and a table does not say on which. */
  | {
      readonly is: 'machine not said';
      readonly tables: readonly TableRead[];
      readonly places: readonly Place[];
      readonly meanings: readonly MeaningId[];
    };

/** All that a workbook certainly says of one channel, by meaning. */
export interface ReadChannel {
  readonly tag: string;
  readonly machine: string;
  /** Told by a word; `null` where nothing tells it or what tells it is not understood. */
  readonly kind: Kind | null;
  readonly kindSaid: string;
  readonly values: ReadonlyMap<MeaningId, ReadValue>;
  readonly notes: readonly PlacedNote[];
  readonly troubles: readonly ReadingProblem[];
  /** Lines that it was read from: the table with its number, and the row, column or form. */
  readonly lines: readonly {
    readonly table: TableRead;
    readonly record: number;
    readonly place: Place;
    /** When it was tested, in days since 1970-01-01; `null` where it does not say. */
    readonly day: number | null;
  }[];
}
