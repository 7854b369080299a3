import * as z from 'zod';
import { kinds } from '../model/channel.ts';
import { AuditRefused } from '../model/refused.ts';
import { memberOutPolicies } from '../../method/voting/liveVote.ts';
import { type Quantity, type Snapshot, quantityNames } from '../model/snapshot.ts';
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

/** What reports before rules version 0.6.0, or 0.6.1, do not have. */
const further = {
  gain: z.number().optional(),
  zeroUncertainty: amount.optional(),
  loop: z
    .object({
      at0: z.number(),
      at100: z.number(),
      at0Uncertainty: amount,
      at100Uncertainty: amount,
      span: z.number(),
      isAll: z.boolean(),
    })
    .nullish(),
  batch: text.optional(),
  sharedUncertainty: amount.optional(),
  chainLength: amount.optional(),
};

/** Where each of these is kept. */
const keptUnder = {
  'monitor gain': 'gain',
  'zero voltage uncertainty': 'zeroUncertainty',
  'loop current at 0 %': 'loop',
  'loop current at 100 %': 'loop',
  batch: 'batch',
  'shared uncertainty': 'sharedUncertainty',
  'chain length': 'chainLength',
} as const satisfies Partial<Record<Quantity, keyof typeof further>>;

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
    ...further,
  }),
  /** Of schema 1: the channel judged as it was left. */
  asLeft: z.object(judged).nullish(),
  source: z.object({ channels: place, settings: place.nullable() }),
});

const votes = z.enum(memberOutPolicies).nullable();

const schema = z.object({
  schema: z.enum(['tripdrift-report/1', 'tripdrift-report/2']),
  version: z.string(),
  input: z.string(),
  generated: z.string(),
  policy: z.object({
    tolerance: z.number(),
    rule: z.string(),
    bypassed: votes.optional(),
    faulty: votes.optional(),
    groups: z
      .array(z.object({ machine: z.string(), group: z.string(), bypassed: votes, faulty: votes }))
      .optional(),
  }),
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
  const { bypassed, faulty, groups = [] } = policy;
  const ofVotes = bypassed === undefined || faulty === undefined ? null : { bypassed, faulty, groups };
  return {
    input,
    from: 'report',
    sheet: null,
    audited: generated,
    rules: version,
    tolerance: policy.tolerance,
    rule: policy.rule,
    channels: channels.map(({ asLeft, ...found }) => keptOf(asAsLeft(found, asLeft ?? null), ofVotes)),
    unknown: [...notKept(channels), ...(ofVotes ? [] : ofOut)],
    remarks: [],
  };
}

const ofOut = ['vote when bypassed', 'vote when faulty'] as const satisfies readonly Quantity[];

/** Quantities that no channel of an older report has. */
function notKept(channels: readonly Kept[]): Quantity[] {
  return quantityNames.filter((name) => {
    const key = name in keptUnder ? keptUnder[name as keyof typeof keptUnder] : null;
    return key !== null && channels.every(({ inputs }) => inputs[key] === undefined);
  });
}

/** A channel of schema 1 as it stood once it was left. */
function asAsLeft(found: Kept, left: Pick<Kept, 'sensitivity' | 'thresholds' | 'verdict'> | null): Kept {
  return left === null ? found : { ...found, ...left };
}
