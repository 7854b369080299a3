import type { ColumnMap } from '../../../audit/model/columnMap.ts';
import type { MeaningId } from '../../../audit/read/understand/meaning.ts';
import type { FieldOption } from '../../../audit/read/understand/questions/question.ts';
import type { TableRead } from '../../../audit/read/understand/tables/tableRead.ts';
import type { SheetArea } from '../../../hosts/port/port.ts';
import { askingMessages } from './askingMessages.ts';

/** One way to answer a row of the table of questions. */
export interface Choice {
  readonly label: string;
  /** The column that it names, or whose unit it is. */
  readonly field: FieldOption | null;
  readonly unit: string | null;
  /** What is pointed at in the sheet while it is chosen. */
  readonly place: SheetArea | null;
  /** What it says about the workbook; `null`: nothing, the question stays open. */
  readonly answer: ColumnMap | null;
}

/** One row of the table: a meaning or another question, with what is proposed and why. */
export interface AskedRow {
  readonly id: string;
  readonly title: string;
  readonly question: string;
  readonly stakes: string;
  readonly needed: boolean;
  /** Whether its first choice is an answer that is asked for, or what holds anyway. */
  readonly asks: boolean;
  /** What speaks for the first choice, a line each. */
  readonly evidence: readonly string[];
  /** The first one holds unless another is chosen. */
  readonly choices: readonly Choice[];
  /** Sheets that it is about, where there are several. */
  readonly sheets: readonly string[];
  /** What a column that is clicked in the sheet would mean, and the tables that were asked about: several of one layout, or none. */
  readonly column: { readonly meaning: MeaningId; readonly tables: readonly TableRead[] } | null;
}

/** Nothing is said: the question stays open. */
export const leftOpen: Choice = {
  label: askingMessages.leaveOpen,
  field: null,
  unit: null,
  place: null,
  answer: null,
};
