import type { AuditRun, PartCheck } from '../../../evidence/verification.ts';
import { clockTime } from '../auditWords.ts';

/** Texts of the check of result sheets. */
export const checkWords = {
  check: 'Check results',
  hint: 'Tells whether inputs, policy or results were edited since the newest result sheets were written.',
  reading: 'Reading the workbook',
  checking: 'Checking the results',
  cancel: 'Cancel',
  cancelled: 'Cancelled. Nothing was checked.',
  nothing: 'There are no result sheets to check. Run the audit and write them first.',
  without: 'These result sheets carry no evidence and can’t be checked:',
  clean: 'Nothing was edited since this audit.',
  edited: 'Changed since the audit.',
  parts: { inputs: 'Inputs', policy: 'Policy', results: 'Results' },
  older: 'Result sheets of other audits, not checked',
  should: { inputs: 'was', policy: 'was', results: 'should be' },
  empty: 'empty',
  more: (count: number) => `and ${count} more cells`,
} as const;

export const stateWords: Readonly<Record<PartCheck['state'], string>> = {
  'as audited': 'as audited',
  edited: 'edited',
  'not known': 'not known',
};

/** An audit for people: its id and its time. */
export function runWords({ id, generated }: AuditRun): string {
  return generated === '' ? `Audit ${id}` : `Audit ${id}, ${clockTime(generated)}`;
}
