import type { AskedField, AskedOption, AskedQuestion, AskedSubject } from '../../../model/question.ts';
import type { MeaningId } from '../meaning.ts';
import type { Evidence } from '../standing/evidence.ts';

export type { AskedField as FieldOption, AskedOption as Option };

/** What is asked. */
export type Subject = AskedSubject<MeaningId>;

/** A question as the understanding asks it: by its own meanings and evidence. */
export interface Question extends AskedQuestion<MeaningId, Evidence> {
  /** Sheets that it is about: one question stands for all tables of one layout. */
  readonly sheets: readonly string[];
}
