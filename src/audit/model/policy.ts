import * as z from 'zod';
import { offsetAtOf } from '../../method/replay/localTime.ts';
import { memberOutPolicies } from '../../method/voting/liveVote.ts';
import { parseUnit } from '../../units/parse.ts';
import { AuditRefused } from './refused.ts';

/** A number from `least` to `most`: what lies beyond would switch a part of the audit off. */
function within(least: number, most: number, says: string) {
  return z
    .number()
    .min(least, { error: `must be ${says}` })
    .max(most, { error: `must be ${says}` });
}

/** A fraction above 0 and below a half; twice as much or half as little can be no tolerance. */
const belowHalf = z.number().gt(0, { error: 'must be above 0' }).lt(0.5, {
  error: 'must be below 0.5 (50 %): a tolerance as wide as that passes a chain that protects nothing',
});

const sensitivity = z.strictObject({
  value: within(1e-6, 1e6, 'from 0.000001 to 1,000,000'),
  unit: z.string().refine((text) => /^(voltage|current)\//u.test(parseUnit(text)?.dimension ?? ''), {
    error: 'is no unit of sensitivity, such as mV/mil, mV/µm or mV/g',
  }),
});
/** A displacement between two of these, in µm. */
function displacement(least: number, most: number, says: string) {
  return z
    .strictObject({
      value: z.number(),
      unit: z.string().refine((text) => parseUnit(text)?.dimension === 'displacement', {
        error: 'is no unit of displacement, such as mil or µm',
      }),
    })
    .refine(
      ({ value, unit }) => {
        const size = value * (parseUnit(unit)?.factor ?? 1);
        return size >= least && size <= most;
      },
      { path: ['value'], error: `must be ${says}` },
    );
}

const outPolicy = z.enum(memberOutPolicies).nullable().default(null);
/** Gap voltages on any supply in use (common practice, no source). */
const volts = within(-60, 0, 'from −60 V to 0 V');
const seconds = within(0, 60, 'from 0 s to 60 s');

/** What the site accepts. Every part has a default; what is used stands in every report. */
export const policySchema = z.strictObject({
  /** Accepted departure of the measured from the configured sensitivity. API 670 incremental scale factor, from memory: 5 %. */
  tolerance: belowHalf.default(0.05),
  /** `guarded`: the whole uncertainty interval decides where an uncertainty is given; `simple`: the value alone (ILAC-G8:09/2019). */
  rule: z.enum(['guarded', 'simple']).default('guarded'),
  /** Coverage factor of an uncertainty where no column names one. */
  coverage: within(1, 4, 'from 1 to 4').default(2),
  /** Days after which a calibration is old. Site practice; common practice, no source. */
  calibrationIntervalDays: within(1, 7305, 'from 1 to 7,305 days, which are 20 years').default(730),
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
  ratedTolerance: belowHalf.default(0.1),
  /** Least linear range that a displacement chain should have; 80 mil is common practice, no source. */
  minimumLinearRange: displacement(254, 254_000, 'from 10 mil to 10,000 mil (254 mm)').default({
    value: 80,
    unit: 'mil',
  }),
  /** Gap voltages between which a chain on a −24 V supply is taken as linear; common practice, no source. */
  linearVolts: z
    .strictObject({ near: volts.default(-2), far: volts.default(-18) })
    .refine((span) => span.far < span.near, { error: 'far must be more negative than near' })
    .prefault({}),
  /** Gap voltages closer than this count as the same when the readings are looked at for a cause. */
  gapVoltageTolerance: within(0.01, 5, 'from 0.01 V to 5 V').default(0.5),
  /** What a calibration record may depart by. API 670, ±5 % and ±1 mil, from memory. */
  recordTolerance: z
    .strictObject({
      /** Of an incremental from the rated sensitivity. */
      incremental: belowHalf.default(0.05),
      /** From the line of rated slope. */
      deviation: displacement(0.0254, 508, 'from 0.001 mil to 20 mil (508 µm)').default({
        value: 1,
        unit: 'mil',
      }),
    })
    .prefault({}),
  /** How the points of a record are joined. */
  curve: z.enum(['monotone', 'linear']).default('monotone'),
  /** Departure of a threshold on the record's curve from the one by its single sensitivity, above which it is reported. */
  curveDifference: belowHalf.default(0.05),
  /** Longest alarm delays that are accepted, s; 1 to 3 s is common practice, no source. */
  delays: z.strictObject({ alert: seconds.default(3), danger: seconds.default(3) }).prefault({}),
  /** How recorded readings are replayed. */
  replay: z
    .strictObject({
      /** Zone of times that name no offset: `UTC`, `+01:00`, `Europe/Berlin`; `null`: only times that name theirs are read. */
      zone: z
        .string()
        .refine((zone) => offsetAtOf(zone) !== null, {
          error: 'is no time zone, such as UTC, +01:00 or Europe/Berlin',
        })
        .nullable()
        .default(null),
      /** Order of dates such as 03/04/2026; `null`: as the file tells by a day above 12. */
      dates: z.enum(['day first', 'month first']).nullable().default(null),
      /** s; readings farther apart leave what is between unknown; `null`: three times the usual time between them. */
      maxGap: within(0.001, 31_622_400, 'from 0.001 s to 31,622,400 s, which is a year')
        .nullable()
        .default(null),
      /** Between readings: straight, or the older value until the next. */
      between: z.enum(['line', 'hold']).default('line'),
    })
    .prefault({}),
  /** What the system does with the vote of a member in bypass; `null`: not said, taken as no vote. A setting, never inferred. */
  bypassed: outPolicy,
  /** The same of a member that the monitor marks faulty. */
  faulty: outPolicy,
  /** Groups whose system does otherwise; a group without a machine is that group on any. */
  groups: z
    .array(
      z.strictObject({
        machine: z.string().default(''),
        group: z.string().min(1, { error: 'must name the group' }),
        bypassed: outPolicy,
        faulty: outPolicy,
      }),
    )
    .default([]),
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
