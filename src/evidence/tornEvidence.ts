import { shortId } from '../audit/evidence/fingerprint.ts';
import { resultsFingerprint } from '../sheets/evidence/resultsFingerprint.ts';
import { storedFingerprints, type StoredEvidence } from './storedEvidence.ts';

/** What of the evidence of an audit, known by its short id, contradicts itself; one sentence each. */
export function tornEvidence(id: string, evidence: StoredEvidence): string[] {
  const { inputs, policy, time, results } = evidence;
  const said: string[] = [];
  if (evidence.id !== id || shortId({ fingerprint: { inputs, policy }, generated: time }) !== id)
    said.push(
      'The short id does not follow from the fingerprints and the time in the evidence: one of them was edited.',
    );
  const sheets = storedFingerprints(evidence);
  if (!sheets || resultsFingerprint(sheets) !== results)
    said.push('The fingerprint of results does not follow from those of the sheets: one of them was edited.');
  return said;
}
