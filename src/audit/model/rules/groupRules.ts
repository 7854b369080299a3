import type { MemberReason, ThresholdName } from '../threshold.ts';

/** A voting group and the threshold on which it votes. */
interface Vote {
  readonly group: string;
  readonly voting: string;
  readonly threshold: ThresholdName;
  /** Above 1: while the start-up multiplier of its members is on. */
  readonly multiplier: number;
}

interface CannotAct extends Vote {
  readonly idle: readonly { readonly tag: string; readonly why: MemberReason | null }[];
}

/** What can be said of voting groups. */
export interface GroupRules {
  'voting-not-understood': { readonly voting: string };
  'voting-missing': { readonly group: string };
  'voting-contradicts': {
    readonly group: string;
    readonly votings: readonly string[];
    readonly used: string;
  };
  'group-missing': { readonly voting: string };
  'group-size-differs': {
    readonly group: string;
    readonly voting: string;
    /** Members that the voting takes. */
    readonly needed: number;
    readonly listed: number;
  };
  'group-cannot-trip': CannotAct;
  'group-cannot-act': CannotAct;
  /** The votes of members out of service have tripped it. */
  'group-tripped': Vote & {
    readonly out: readonly { readonly tag: string; readonly because: string; readonly policy: string }[];
  };
  'group-beyond-limit': Vote & {
    readonly effective: number;
    readonly limit: number;
    readonly unit: string;
    readonly decidedBy: readonly string[];
  };
  'group-late': Vote & {
    readonly effective: number;
    readonly intended: number;
    readonly unit: string;
    readonly decidedBy: readonly string[];
  };
}
