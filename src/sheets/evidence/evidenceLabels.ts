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
const aboutResults: ReadonlySet<unknown> = new Set([evidenceLabels.results, evidenceLabels.sheets]);

/**
 * Whether a row of a summary is such a line and nothing more: a text that somebody put beside it is an edit. `cellAt`
 * counts from 0, up to `length`.
 */
export function isAboutResults(length: number, cellAt: (index: number) => unknown): boolean {
  if (!aboutResults.has(cellAt(0))) return false;
  for (let index = 1; index < length; index++) {
    const cell = cellAt(index) ?? null;
    if (index !== evidenceColumn - 1 && cell !== null && cell !== '') return false;
  }
  return true;
}

/** Column of the summary in which the lines of its part "Evidence" say what they say, from 1. */
export const evidenceColumn = 3;
