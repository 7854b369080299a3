import { shortId } from '../../audit/evidence/fingerprint.ts';
import { parseColumnMap } from '../../audit/model/columnMap.ts';
import type { Report } from '../../audit/model/report.ts';
import { heading, remark, rest, wide, type Entry } from '../summary/layout.ts';
import { evidenceLabels } from './evidenceLabels.ts';
import { resultsFingerprint, type SheetFingerprints } from './resultsFingerprint.ts';

/** Longest text of one cell; a longer one goes on in the next line under the same label. */
const longest = 30_000;

const words =
  'By these lines a later check tells whether inputs, policy or results were edited since (command line: --verify; task pane: Check results). It finds edits, not forgers: whoever changes a value and its fingerprint together is not found out. Fingerprints are SHA-256.';

/**
 * All it takes to repeat the audit and compare its results: fingerprints, time, policy, and the column map with its entries
 * in the order in which they are read back.
 */
export function evidenceLines(report: Report, sheets: SheetFingerprints): readonly (readonly Entry[])[] {
  const { fingerprint, generated, version, input, policy, basis } = report;
  const { map, ...state } = basis;
  const said: Readonly<Record<keyof typeof evidenceLabels, string>> = {
    id: shortId(report),
    inputs: fingerprint.inputs,
    policy: fingerprint.policy,
    results: resultsFingerprint(sheets),
    sheets: JSON.stringify(sheets),
    time: generated,
    version,
    input,
    policyText: JSON.stringify(policy),
    mapText: JSON.stringify(parseColumnMap(map)),
    stateText: JSON.stringify(state),
  };
  const keys = Object.keys(evidenceLabels) as (keyof typeof evidenceLabels)[];
  return [
    heading('Evidence'),
    remark(words),
    ...keys.flatMap((key) =>
      pieces(said[key]).map((piece): readonly Entry[] => [
        wide(evidenceLabels[key], 'strong', 2),
        wide(piece, 'oneLine', rest(2)),
      ]),
    ),
  ];
}

function pieces(text: string): string[] {
  const found: string[] = [];
  for (let from = 0; from < Math.max(1, text.length); from += longest)
    found.push(text.slice(from, from + longest));
  return found;
}
