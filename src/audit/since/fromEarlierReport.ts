import * as z from 'zod';
import { kinds } from '../model/channel.ts';
import { AuditRefused } from '../model/refused.ts';
import type { Snapshot } from '../model/snapshot.ts';
import { thresholdNames, verdicts } from '../model/threshold.ts';
import { keptOf, type Kept } from './fromReport.ts';

const amount = z.number().nullable();
const text = z.string().nullable();
const place = z.object({ sheet: z.string(), row: z.number() });

const threshold = z.object({
  name: z.enum(thresholdNames),
  multiplier: z.number(),
  setpoint: amount,
  effective: amount,
  verdict: z.enum(verdicts),
});

const judged = {
  sensitivity: z.object({ configured: amount, measured: amount, unit: text }),
  thresholds: z.array(threshold),
  verdict: z.enum(verdicts),
};

const channel = z.object({
  tag: z.string(),
  machine: z.string(),
  location: z.string(),
  kind: z.enum(kinds).nullable(),
  unit: text,
  detection: text,
  ...judged,
  inputs: z.object({
    limit: amount,
    fullScale: amount,
    resolution: amount,
    zeroConfigured: amount,
    zeroMeasured: amount,
    direction: text,
    alertDelay: amount,
    dangerDelay: amount,
    group: text,
    voting: text,
    bypass: z.boolean().nullable(),
    calibratedOn: text,
  }),
  /** Of schema 1: the channel judged as it was left. */
  asLeft: z.object(judged).nullish(),
  source: z.object({ channels: place, settings: place.nullable() }),
});

const schema = z.object({
  schema: z.enum(['tripdrift-report/1', 'tripdrift-report/2']),
  version: z.string(),
  input: z.string(),
  generated: z.string(),
  policy: z.object({ tolerance: z.number(), rule: z.string() }),
  channels: z.array(channel),
});

/**
 * A report that was kept as JSON, of this schema or the one before, as an earlier audit: each channel as it stood then, as left
 * where it was judged so.
 * @throws AuditRefused naming the entry that can't be read.
 */
export function earlierReport(json: unknown): Snapshot {
  const parsed = schema.safeParse(json);
  if (!parsed.success) {
    const [issue] = parsed.error.issues;
    throw new AuditRefused(
      `This is no report of an audit that can be compared: at ${issue?.path.join('.') || 'its top level'}: ${issue?.message ?? 'not understood'}. Name the report or the workbook of an earlier audit.`,
    );
  }
  const { input, generated, version, policy, channels } = parsed.data;
  return {
    input,
    from: 'report',
    sheet: null,
    audited: generated,
    rules: version,
    tolerance: policy.tolerance,
    rule: policy.rule,
    channels: channels.map(({ asLeft, ...found }) => keptOf(asAsLeft(found, asLeft ?? null))),
    unknown: [],
    remarks: [],
  };
}

/** A channel of schema 1 as it stood once it was left. */
function asAsLeft(found: Kept, left: Pick<Kept, 'sensitivity' | 'thresholds' | 'verdict'> | null): Kept {
  return left === null ? found : { ...found, ...left };
}
