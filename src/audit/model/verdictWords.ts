import type { ThresholdVerdict } from './threshold.ts';

/** The verdicts as people see them; their names in the report are an interface and stay. */
export const verdictWords: Readonly<Record<ThresholdVerdict, string>> = {
  unreachable: 'cannot act',
  late: 'late',
  undetermined: 'uncertain',
  early: 'early',
  incomplete: 'not known',
  within: 'OK',
};
