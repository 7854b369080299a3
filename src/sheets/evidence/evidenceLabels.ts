/** What stands in the first column of the summary's part "Evidence", beside what each line says. */
export const evidenceLabels = {
  id: 'Audit',
  inputs: 'Fingerprint of inputs',
  policy: 'Fingerprint of policy',
  results: 'Fingerprint of results',
  sheets: 'Fingerprints of sheets',
  time: 'Time of the audit',
  version: 'Rules version',
  input: 'Workbook',
  policyText: 'Policy as JSON',
  mapText: 'Column map as JSON',
  stateText: 'State as JSON',
} as const;

/** Lines that say what the results are, and so are no part of them. */
export const aboutResults: ReadonlySet<unknown> = new Set([evidenceLabels.results, evidenceLabels.sheets]);

/** Column of the summary in which the lines of its part "Evidence" say what they say, from 1. */
export const evidenceColumn = 3;
