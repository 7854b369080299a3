import type { ThresholdName, ThresholdVerdict, ThresholdChange } from './threshold.ts';
import type { RowPlace } from './findings.ts';
import type { EarlierRemark, SnapshotSource, Quantity } from './snapshot.ts';

const late: ReadonlySet<ThresholdVerdict> = new Set(['unreachable', 'late', 'undetermined']);

/** What a line of the comparison says, worst first. */
export const changeKinds = [
  'newly unreachable',
  'newly late',
  'newly undetermined',
  'newly incomplete',
  'gone',
  'not compared',
  'still unreachable',
  'still late',
  'still undetermined',
  'still incomplete',
  'newly early',
  'changed setting',
  'changed sensitivity',
  'changed zero',
  'new',
  'still early',
  'cured',
  'completed',
] as const;
/**
 * `newly …`, `still …`: a threshold's verdict now, against the earlier one; `cured`: within tolerance now and not before;
 * `completed`: could not be told before, within now. `gone` and `new`: channels of one audit alone. `not compared`: a tag
 * that stands more than once.
 */
export type ChangeKind = (typeof changeKinds)[number];

/** The kinds of change as people see them; their names in the report are an interface and stay. */
export const changeWords: Readonly<Record<ChangeKind, string>> = {
  'newly unreachable': 'now cannot act',
  'newly late': 'now late',
  'newly undetermined': 'now uncertain',
  'newly incomplete': 'now not known',
  gone: 'gone',
  'not compared': 'not compared',
  'still unreachable': 'still cannot act',
  'still late': 'still late',
  'still undetermined': 'still uncertain',
  'still incomplete': 'still not known',
  'newly early': 'now early',
  'changed setting': 'changed setting',
  'changed sensitivity': 'changed sensitivity',
  'changed zero': 'changed zero',
  new: 'new',
  'still early': 'still early',
  cured: 'corrected',
  completed: 'now known',
};

/** One thing that differs, or is still as bad as it was. */
export interface Change {
  readonly kind: ChangeKind;
  readonly tag: string;
  readonly machine: string;
  readonly location: string;
  readonly threshold: ThresholdName | null;
  readonly multiplier: number | null;
  /** The setting or reading that changed. */
  readonly quantity: Quantity | null;
  /** Of a threshold: where it really acts. Both in `unit`; words as they are; `null` where there is none. */
  readonly before: number | string | null;
  readonly now: number | string | null;
  readonly unit: string | null;
  readonly verdictBefore: ThresholdVerdict | null;
  readonly verdictNow: ThresholdVerdict | null;
  readonly message: string;
  /** Its row in the channel list of this audit; of a channel that is gone, in the earlier source. */
  readonly source: RowPlace;
}

/** What changed since an earlier audit. */
export interface SinceResult {
  readonly before: {
    readonly input: string;
    readonly from: SnapshotSource;
    readonly sheet: string | null;
    /** ISO 8601; `null` where it is not known. */
    readonly audited: string | null;
    readonly channels: number;
  };
  readonly counts: Readonly<Record<ChangeKind, number>>;
  /** Worst first, as `changeKinds` lists them. */
  readonly changes: readonly Change[];
  /** What of the earlier source could not be read, and what could not be compared. */
  readonly remarks: readonly EarlierRemark[];
}

/** Whether a verdict leaves it open that the machine is protected as set: late, unreachable or undetermined. */
export function mayBeLate(verdict: ThresholdVerdict): boolean {
  return late.has(verdict);
}

/** What became of a threshold, from its verdicts as found and as left; see `ThresholdChange`. */
export function changeOf(found: ThresholdVerdict, left: ThresholdVerdict): ThresholdChange {
  if (found === 'incomplete' || left === 'incomplete') return 'not judged';
  if (left === 'within') return found === 'within' ? 'unchanged' : 'corrected';
  return found === left ? `still ${left}` : `now ${left}`;
}
