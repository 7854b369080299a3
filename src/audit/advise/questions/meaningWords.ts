import { meaning, type MeaningId } from '../../read/understand/meanings/meaning.ts';

/** Names that do not go into a sentence as they stand above a column. */
const spoken: Readonly<Partial<Record<MeaningId, string>>> = {
  alert: 'alert setpoint',
  danger: 'danger setpoint',
  kind: 'kind of channel',
  calibratedOn: 'date of calibration',
  lastGoodOn: 'date when it was last good',
  bypass: 'note that it is in bypass',
};

/** The name of a meaning in a sentence: `danger setpoint`, `date of calibration`. */
export function meaningWords(id: MeaningId): string {
  return spoken[id] ?? meaning(id).name;
}
