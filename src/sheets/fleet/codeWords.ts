import type { AttentionCode } from '../../audit/model/report.ts';
import type { Counts } from '../summary/counts.ts';
import type { Urgency } from './types.ts';

/** What something is about, in a word or two. */
export const codeWords: Readonly<Record<AttentionCode, string>> = {
  'past-danger': 'past danger',
  'group-cannot-trip': 'cannot trip',
  unreachable: 'cannot act',
  'in-bypass': 'in bypass',
  late: 'late',
  'did-not-act': 'did not act',
  'run-up-no-action': 'would not act',
  'run-up-late': 'late on run-up',
  'acted-late': 'acted late',
  'not-proven': 'not proven',
  'beyond-limit': 'beyond limit',
  'group-late': 'group late',
  'group-beyond-limit': 'beyond limit',
  undetermined: 'uncertain',
  'may-be-beyond-limit': 'may be beyond limit',
  incomplete: 'not known',
  'not-read': 'not read',
  question: 'asked',
  'past-alert': 'past alert',
  'group-cannot-act': 'cannot alarm',
  'group-tripped': 'has tripped',
  early: 'early',
  finding: 'finding',
  problem: 'problem',
};

/** The worst that is true of a workbook or machine, in a word or two. */
export function worstWord(gravest: Urgency | null, { channels }: Pick<Counts, 'channels'>): string {
  if (gravest) return codeWords[gravest.code];
  return channels === 0 ? 'no channels' : 'OK';
}
