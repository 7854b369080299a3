import type { Cell } from '../../../cells/cell.ts';
import type { Unit } from '../../../units/parse.ts';
import type { Diagnostic } from '../rows/diagnostic.ts';
import type { Holds, TableKind } from '../tables/vocabulary.ts';
import type { Place } from '../understand/blocks/block.ts';
import type { MeaningId } from '../understand/meaning.ts';
import type { Evidence } from '../understand/standing/evidence.ts';

/** A value of a channel as it is believed, with the cell that it comes from. */
export interface TidyValue {
  /** A number in `unit`, a text, or a date. */
  readonly cell: Exclude<Cell, null>;
  readonly unit: Unit | null;
  readonly place: Place;
  /** The cell at `place` holds just this, so that a formula may refer to it; else it holds a text, another unit or a share. */
  readonly asItStands: boolean;
}

/** A field of the workbook from which a column is read, with the evidence for what it means. */
export interface TidyField {
  /** Of its header, or of its label. */
  readonly place: Place;
  readonly header: string;
  /** Unit of all its values; `null` where each has its own, or none. */
  readonly unit: string | null;
  readonly evidence: readonly Evidence[];
}

/** A column of the list, in the table in which it usually stands. */
export interface TidyColumn {
  readonly id: MeaningId;
  /** Its standard header. */
  readonly name: string;
  readonly table: TableKind;
  readonly holds: Holds;
  readonly fields: readonly TidyField[];
}

/** A channel of the list: what is certain of it, and what is to be said of what is not. */
export interface TidyChannel {
  readonly tag: string;
  readonly machine: string;
  /** Tells it from every other channel: its tag, and its machine where the tag stands on several. */
  readonly key: string;
  /** Cells of its tag where its probe and where its settings are listed. */
  readonly at: Readonly<Record<TableKind, Place>>;
  /** Whether a list of probes and whether a list of settings has it at all. */
  readonly listed: Readonly<Record<TableKind, boolean>>;
  readonly hidden: boolean;
  readonly values: ReadonlyMap<MeaningId, TidyValue>;
  /** Cells of what could not be used, or where nothing stands. */
  readonly unused: ReadonlyMap<MeaningId, Place>;
  readonly remarks: Readonly<Record<TableKind, readonly Diagnostic[]>>;
}

/**
 * All channels of a workbook as one list in the standard shape, whatever shape it is kept in: only what is certain or was
 * answered, each value with its source and each column with its evidence.
 */
export interface TidyList {
  /** Sheets from which it is read, in their order. */
  readonly sheets: readonly string[];
  readonly columns: readonly TidyColumn[];
  readonly channels: readonly TidyChannel[];
}
