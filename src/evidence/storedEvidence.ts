import { columnMapSchema } from '../audit/model/columnMap.ts';
import type { AuditBasis } from '../audit/model/basis.ts';
import * as z from 'zod';
import type { Sheet } from '../cells/sheet.ts';
import { evidenceColumn, evidenceLabels } from '../sheets/evidence/evidenceLabels.ts';
import { shortId } from '../audit/evidence/fingerprint.ts';
import { resultsFingerprint } from '../sheets/evidence/resultsFingerprint.ts';

type Key = keyof typeof evidenceLabels;

/** The lines of a summary sheet's part "Evidence", as they stand. */
export type StoredEvidence = Readonly<Record<Key, string>>;

const keyOf = new Map<unknown, Key>(
  (Object.keys(evidenceLabels) as Key[]).map((key) => [evidenceLabels[key], key]),
);

/** Reads the evidence from a summary sheet; lines that are missing are empty. Texts over several lines are joined. */
export function storedEvidence({ rows }: Sheet): StoredEvidence {
  const found = Object.fromEntries(Object.keys(evidenceLabels).map((key) => [key, ''])) as Record<
    Key,
    string
  >;
  const start = rows.findLastIndex(([label]) => label === 'Evidence');
  for (const cells of start < 0 ? [] : rows.slice(start)) {
    const key = keyOf.get(cells[0]);
    const value = cells[evidenceColumn - 1] ?? null;
    if (key && value !== null) found[key] += typeof value === 'object' ? '' : String(value);
  }
  return found;
}

/** Texts by names that a user chose: any, so that one called `__proto__` is kept as well, which `z.record` leaves out. */
const textsByName = z.custom<Readonly<Record<string, string>>>(
  (value) =>
    typeof value === 'object' &&
    value !== null &&
    !Array.isArray(value) &&
    Object.values(value).every((text) => typeof text === 'string'),
);

const stateSchema = z.strictObject({
  textTables: z.array(z.strictObject({ sheet: z.string(), decimal: z.enum(['.', ',']) })),
  hiddenSheets: z.array(z.string()),
  hiddenRows: textsByName,
  earlierResults: z.array(z.string()),
  comparedWith: z.string().nullable(),
  // Older audits replayed nothing and name no file.
  replayedFrom: z.string().nullable().default(null),
});

/** What the audit went by beside cells and policy; `undefined` where those lines are no longer readable. */
export function storedBasis({ mapText, stateText }: StoredEvidence): AuditBasis | undefined {
  const map = columnMapSchema.safeParse(json(mapText));
  const state = stateSchema.safeParse(json(stateText));
  return map.success && state.success ? { map: map.data, ...state.data } : undefined;
}

/** SHA-256 by the title of each result sheet; `undefined` where the line is no longer readable. */
export function storedFingerprints({ sheets }: StoredEvidence): Readonly<Record<string, string>> | undefined {
  return textsByName.safeParse(json(sheets)).data;
}

/** A JSON text's data; `undefined` where it is none. */
export function json(text: string): unknown {
  try {
    return JSON.parse(text) as unknown;
  } catch {
    return undefined;
  }
}

/** What of the evidence of an audit, known by its short id, contradicts itself; one sentence each. */
export function damagedEvidence(id: string, evidence: StoredEvidence): string[] {
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
