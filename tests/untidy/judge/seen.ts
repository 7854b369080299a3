import * as z from 'zod';
import { micrometresPerMil } from '../truth.ts';
import { type Saying, sayings } from './said.ts';

/** A state of a channel in mV/mil and mil peak to peak; `null` where the report has nothing. */
export interface SeenState {
  readonly configured: number | null;
  readonly measured: number | null;
  readonly alert: number | null;
  readonly danger: number | null;
  /** Where the danger really acts. */
  readonly effective: number | null;
  /** Of the danger. */
  readonly verdict: string;
}

export interface SeenChannel {
  readonly tag: string;
  readonly machine: string;
  readonly kind: string | null;
  readonly found: SeenState;
  readonly left: SeenState | null;
  readonly inputs: SeenInputs | null;
  readonly inBypass: boolean | null;
  /** What the report says of it with a place. */
  readonly remarks: readonly Saying[];
}

interface SeenInputs {
  readonly fullScale: number | null;
  readonly limit: number | null;
  readonly gapVoltage: number | null;
  readonly group: string | null;
  readonly voting: string | null;
  readonly bypass: boolean | null;
}

const number = z
  .number()
  .nullish()
  .transform((value) => value ?? null);
const text = z
  .string()
  .nullish()
  .transform((value) => value ?? null);

const state = z.looseObject({
  sensitivity: z.looseObject({ configured: number, measured: number, unit: text }),
  thresholds: z.array(
    z.looseObject({
      name: z.string(),
      multiplier: z
        .number()
        .nullish()
        .transform((value) => value ?? 1),
      setpoint: number,
      effective: number,
      verdict: z.string(),
    }),
  ),
});

const channel = state.extend({
  tag: z.string(),
  machine: text,
  kind: text,
  unit: text,
  detection: text,
  inBypass: z.boolean().nullish(),
  asLeft: state.nullish(),
  asFound: state.nullish(),
  inputs: z
    .looseObject({
      fullScale: number,
      limit: number,
      gapVoltage: number,
      group: text,
      voting: text,
      bypass: z.boolean().nullish(),
    })
    .nullish(),
  findings: z.array(z.looseObject({})).nullish(),
});

const report = z.looseObject({
  channels: z.array(channel),
  attention: z
    .array(z.looseObject({ severity: z.string(), subject: z.looseObject({ tag: text, threshold: text }) }))
    .nullish(),
});

export interface SeenReport {
  readonly channels: readonly SeenChannel[];
  /** Tags of dangers that are critical; `null` where the report lists no actions. */
  readonly critical: readonly string[] | null;
}

/**
 * A report of either schema as the examiner looks at it. Where one lists a channel as found with `asLeft` beside it and
 * the other as it is now with `asFound` beside it, both end as found and as left.
 */
export function seen(json: unknown): SeenReport {
  const { channels, attention } = report.parse(json);
  return {
    channels: channels.map((one): SeenChannel => {
      const displacement = times(perMil(one.unit), one.detection === '0-p' ? 2 : 1);
      const now = stateOf(one, displacement);
      const before = one.asFound ? stateOf(one.asFound, displacement) : null;
      const after = one.asLeft ? stateOf(one.asLeft, displacement) : null;
      const { inputs } = one;
      const mil = (value: number | null): number | null => times(value, displacement);
      return {
        tag: one.tag,
        machine: one.machine ?? '',
        kind: one.kind,
        found: before ?? now,
        left: before ? now : after,
        inputs: inputs
          ? {
              ...inputs,
              fullScale: mil(inputs.fullScale),
              limit: mil(inputs.limit),
              bypass: inputs.bypass ?? null,
            }
          : null,
        inBypass: one.inBypass ?? null,
        remarks: sayings({ findings: one.findings ?? [] }),
      };
    }),
    critical:
      attention?.filter(({ severity }) => severity === 'critical').map(({ subject }) => subject.tag ?? '') ??
      null,
  };
}

/** A number without a unit is none. */
function times(value: number | null | undefined, by: number | null): number | null {
  return value === null || value === undefined || by === null ? null : value * by;
}

function stateOf({ sensitivity, thresholds }: z.infer<typeof state>, displacement: number | null): SeenState {
  const threshold = (name: string) => thresholds.find((one) => one.name === name && one.multiplier === 1);
  const factor = mvPerMil(sensitivity.unit);
  const danger = threshold('danger');
  return {
    configured: times(sensitivity.configured, factor),
    measured: times(sensitivity.measured, factor),
    alert: times(threshold('alert')?.setpoint, displacement),
    danger: times(danger?.setpoint, displacement),
    effective: times(danger?.effective, displacement),
    verdict: danger?.verdict ?? 'incomplete',
  };
}

/** mV/mil in one of a unit of sensitivity; `null` without a unit, `NaN` for one that the examiner does not know. */
function mvPerMil(unit: string | null): number | null {
  if (unit === null) return null;
  switch (plain(unit)) {
    case 'mv/mil':
      return 1;
    case 'mv/µm':
    case 'v/mm':
      return micrometresPerMil;
    case 'v/mil':
      return 1000;
    case 'mv/mm':
      return micrometresPerMil / 1000;
    default:
      return NaN;
  }
}

/** Mil in one of a unit of displacement. */
function perMil(unit: string | null): number | null {
  if (unit === null) return null;
  switch (plain(unit).split(' ')[0] ?? '') {
    case 'mil':
    case 'mils':
      return 1;
    case 'µm':
      return 1 / micrometresPerMil;
    case 'mm':
      return 1000 / micrometresPerMil;
    default:
      return NaN;
  }
}

function plain(unit: string): string {
  return unit.replaceAll('\u03bc', 'µ').replace(/um$/u, 'µm').toLowerCase();
}
