import type { Series } from '../standing/evidence.ts';
import type { MeaningId } from '../meaning.ts';
import type { Field } from '../fields/field.ts';
import type { Lane } from '../tables/lane.ts';
import type { StatedUnit } from '../vocabulary/statedUnit.ts';

/** What a person said about one table. */
export interface TableAnswers {
  /** Fields by meaning; `null`: no field has it. */
  readonly columns: ReadonlyMap<MeaningId, Field | null>;
  readonly units: ReadonlyMap<MeaningId, StatedUnit>;
  readonly notQuantities: ReadonlySet<Field>;
  readonly machine: string | null;
  /** Its headings name the machines of the lines below them. */
  readonly machineFromHeadings: boolean;
  readonly series: Series | null;
  /** Whether it is read; `null` where nothing was said. */
  readonly use: boolean | null;
}

/** What a person said about a workbook, for the reading of it. */
export interface Answers {
  readonly of: (lane: Lane) => TableAnswers | undefined;
  /** Other names of tags: what is written → what it is joined as. */
  readonly names: ReadonlyMap<string, string>;
  /** Lines that are no channels, by `Sheet!5` for a row, `Sheet!C` for a column and `Sheet!A5` for the row of a list beside others. */
  readonly leftOut: ReadonlySet<string>;
  /** Numbers of cells, by `Sheet!row,column`; `null`: none that counts. */
  readonly cells: ReadonlyMap<string, number | null>;
}
