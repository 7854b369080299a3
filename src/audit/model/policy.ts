import * as z from 'zod';
import { parseUnit } from '../../units/parse.ts';
import { AuditRefused } from './refused.ts';

const sensitivity = z.strictObject({
  value: z.number().positive(),
  unit: z.string().refine((text) => /^(voltage|current)\//u.test(parseUnit(text)?.dimension ?? ''), {
    error: 'is no unit of sensitivity, such as mV/mil, mV/µm or mV/g',
  }),
});
const displacement = z.strictObject({
  value: z.number().positive(),
  unit: z.string().refine((text) => parseUnit(text)?.dimension === 'displacement', {
    error: 'is no unit of displacement, such as mil or µm',
  }),
});

/** What the site accepts. Every part has a default; what is used stands in every report. */
export const policySchema = z.strictObject({
  /** Accepted departure of the measured from the configured sensitivity. API 670 incremental scale factor, from memory: 5 %. */
  tolerance: z.number().gt(0).lt(1).default(0.05),
  /** `guarded`: the whole uncertainty interval decides where an uncertainty is given; `simple`: the value alone (ILAC-G8:09/2019). */
  rule: z.enum(['guarded', 'simple']).default('guarded'),
  /** Coverage factor of an uncertainty where no column names one. */
  coverage: z.number().gt(0).max(10).default(2),
  /** Days after which a calibration is old. Site practice; common practice, no source. */
  calibrationIntervalDays: z.number().gt(0).default(730),
  /** Rated sensitivity by kind of channel; common practice, no source; `null` where there is none. */
  ratedSensitivity: z
    .strictObject({
      radial: sensitivity.nullable().default({ value: 200, unit: 'mV/mil' }),
      axial: sensitivity.nullable().default({ value: 200, unit: 'mV/mil' }),
      velocity: sensitivity.nullable().default({ value: 100, unit: 'mV/(in/s)' }),
      acceleration: sensitivity.nullable().default({ value: 100, unit: 'mV/g' }),
      loop: sensitivity.nullable().default(null),
    })
    .prefault({}),
  /** Accepted departure of the configured from the rated sensitivity. */
  ratedTolerance: z.number().gt(0).lt(1).default(0.1),
  /** Least linear range that a displacement chain should have; 80 mil is common practice, no source. */
  minimumLinearRange: displacement.default({ value: 80, unit: 'mil' }),
  /** Gap voltages between which a chain on a −24 V supply is taken as linear; common practice, no source. */
  linearVolts: z
    .strictObject({ near: z.number().default(-2), far: z.number().default(-18) })
    .refine((span) => span.far < span.near, { error: 'far must be more negative than near' })
    .prefault({}),
  /** Gap voltages closer than this count as the same when the readings are looked at for a cause. */
  gapVoltageTolerance: z.number().gt(0).default(0.5),
  /** What a calibration record may depart by. API 670, ±5 % and ±1 mil, from memory. */
  recordTolerance: z
    .strictObject({
      /** Of an incremental from the rated sensitivity. */
      incremental: z.number().gt(0).lt(1).default(0.05),
      /** From the line of rated slope. */
      deviation: displacement.default({ value: 1, unit: 'mil' }),
    })
    .prefault({}),
  /** How the points of a record are joined. */
  curve: z.enum(['monotone', 'linear']).default('monotone'),
  /** Departure of a threshold on the record's curve from the one by its single sensitivity, above which it is reported. */
  curveDifference: z.number().gt(0).lt(1).default(0.05),
  /** Longest alarm delays that are accepted, s; 1 to 3 s is common practice, no source. */
  delays: z
    .strictObject({ alert: z.number().gte(0).default(3), danger: z.number().gte(0).default(3) })
    .prefault({}),
});

export type Policy = z.infer<typeof policySchema>;

export const defaultPolicy: Policy = policySchema.parse({});

/**
 * A policy from parsed JSON; what it leaves out has its default.
 * @throws AuditRefused naming the entry that is wrong.
 */
export function parsePolicy(json: unknown): Policy {
  const parsed = policySchema.safeParse(json);
  if (parsed.success) return parsed.data;
  const [issue] = parsed.error.issues;
  throw new AuditRefused(
    `Policy, at ${issue?.path.join('.') || 'its top level'}: ${issue?.message ?? 'not understood'}.`,
  );
}
