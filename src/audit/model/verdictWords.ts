import type { ChangeKind } from './since.ts';
import type { ThresholdChange, ThresholdVerdict } from './threshold.ts';

/** Verdicts as people say them. */
export const verdictWords: Readonly<Record<ThresholdVerdict, string>> = {
  unreachable: 'cannot act',
  late: 'late',
  undetermined: 'uncertain',
  early: 'early',
  incomplete: 'not known',
  within: 'OK',
};

/** What became of a threshold since it was found, as people say it. */
export const thresholdChangeWords: Readonly<Record<ThresholdChange, string>> = {
  corrected: 'corrected',
  unchanged: 'unchanged',
  'not judged': 'not judged',
  'still unreachable': 'still cannot act',
  'still late': 'still late',
  'still undetermined': 'still uncertain',
  'still early': 'still early',
  'now unreachable': 'now cannot act',
  'now late': 'now late',
  'now undetermined': 'now uncertain',
  'now early': 'now early',
};

/** Changes since an earlier audit, as people say them. */
export const changeKindWords: Readonly<Record<ChangeKind, string>> = {
  'newly unreachable': 'now cannot act',
  'newly late': 'now late',
  'newly undetermined': 'now uncertain',
  'newly incomplete': 'now not known',
  gone: 'gone',
  'not compared': 'not compared',
  'still unreachable': 'still cannot act',
  'still late': 'still late',
  'still undetermined': 'still uncertain',
  'still incomplete': 'still not known',
  'newly early': 'now early',
  'changed setting': 'changed setting',
  'changed sensitivity': 'changed sensitivity',
  'changed zero': 'changed zero',
  new: 'new',
  'still early': 'still early',
  cured: 'corrected',
  completed: 'completed',
};
