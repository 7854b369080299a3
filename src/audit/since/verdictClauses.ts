import type { ThresholdVerdict } from '../model/threshold.ts';

/** A verdict as what a subject does now and did before: `is late`, `was late`. */
export const verdictClauses: Readonly<
  Record<ThresholdVerdict, { readonly now: string; readonly before: string }>
> = {
  unreachable: { now: 'cannot act', before: 'could not act' },
  late: { now: 'is late', before: 'was late' },
  undetermined: { now: 'is uncertain', before: 'was uncertain' },
  early: { now: 'is early', before: 'was early' },
  incomplete: { now: 'is not known', before: 'was not known' },
  within: { now: 'is OK', before: 'was OK' },
};
