import type { Place } from './findings.ts';
import type { RunUpOutcome } from './runUp.ts';
import type { ReplayOutcome } from './replay.ts';
import type { LeftAside } from './rules/tableRules.ts';
import type { ThresholdName } from './threshold.ts';

/** What an entry of the list of what needs action is about, in the order in which equals are listed. */
export const attentionCodes = [
  'past-danger',
  'group-cannot-trip',
  'unreachable',
  'in-bypass',
  'late',
  'did-not-act',
  'run-up-no-action',
  'acted-late',
  'run-up-late',
  'beyond-limit',
  'group-late',
  'group-beyond-limit',
  'undetermined',
  'may-be-beyond-limit',
  'incomplete',
  'not-read',
  'question',
  'past-alert',
  'group-cannot-act',
  'group-tripped',
  'not-proven',
  'early',
  'finding',
  'problem',
] as const;
export type AttentionCode = (typeof attentionCodes)[number];

/** What an entry about recorded readings is about, by what they say. */
export const replayCodes: Readonly<Partial<Record<ReplayOutcome, AttentionCode>>> = {
  'did not act': 'did-not-act',
  late: 'acted-late',
  'not known': 'not-proven',
};

/** The same of run-ups. */
export const runUpCodes: Readonly<Partial<Record<RunUpOutcome, AttentionCode>>> = {
  'no action': 'run-up-no-action',
  late: 'run-up-late',
};

/** Entries about a reading, now or recorded: their `panel` is what the panel shows, not what to treat as the setpoint. */
export const pastReadings: ReadonlySet<AttentionCode> = new Set([
  'past-danger',
  'past-alert',
  'did-not-act',
  'acted-late',
  'not-proven',
]);

export interface AttentionSubject {
  /** Empty where it is about no machine. */
  readonly machine: string;
  readonly tag: string;
  readonly threshold: ThresholdName | null;
  readonly multiplier: number | null;
  readonly group: string | null;
}

/** One thing that needs action, with its numbers in `unit`, the sentence that says it and what to do. */
export interface Attention {
  readonly severity: 'critical' | 'warning';
  readonly code: AttentionCode;
  readonly subject: AttentionSubject;
  /** As it is set, multiplier included. */
  readonly set: number | null;
  /** Where it really acts; of a reading: what it really is. */
  readonly real: number | null;
  /** Interval in which it really acts: its lower end, then its upper one. */
  readonly low: number | null;
  readonly high: number | null;
  /** Panel reading to treat as the setpoint meant; of `pastReadings`: what the panel shows or showed. */
  readonly panel: number | null;
  readonly limit: number | null;
  readonly unit: string | null;
  /** Rule of the finding that it comes from, as the report names it; `null` where it comes from a verdict. */
  readonly rule: string | null;
  readonly headline: string;
  readonly doNext: string;
  readonly places: readonly Place[];
}

/** The numbers of an entry that has none. */
export const noNumbers = {
  set: null,
  real: null,
  low: null,
  high: null,
  panel: null,
  limit: null,
  unit: null,
  rule: null,
} as const satisfies Partial<Attention>;

/** Something in the workbook that looks like a part of this audit and was not read. */
export interface NotRead extends Place {
  readonly what: 'sheet' | 'table' | 'column' | 'row' | 'value';
  /** The header, name or cell as it stands. */
  readonly text: string;
  /** Name of the quantity or table that it looks like. */
  readonly looksLike: string;
  readonly severity: 'critical' | 'warning';
  /** Why; absent where it merely has no place in tables that were read by their standard headers. */
  readonly why?: LeftAside;
}
