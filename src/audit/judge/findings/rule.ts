import type { ThresholdResult, ThresholdName } from '../../model/threshold.ts';
import type { Fact } from '../../model/findings.ts';
import type { Channel } from '../../model/channel.ts';
import type { Policy } from '../../model/policy.ts';
import type { TableKind } from '../../read/tables/vocabulary.ts';
import type { OfSetpoint } from '../../model/rules/thresholdRules.ts';

const columns: Readonly<Record<ThresholdName, string>> = {
  alert: 'alert',
  danger: 'danger',
  'counter alert': 'counterAlert',
  'counter danger': 'counterDanger',
};

/** An evaluated channel as the rules see it. */
export interface Audited {
  readonly channel: Channel;
  readonly thresholds: readonly ThresholdResult[];
  readonly policy: Policy;
  /** Day of the audit, counted from 1970-01-01. */
  readonly today: number;
  /** Address of a cell of the channel's row, for a message that is about two cells. */
  readonly cell: (table: TableKind, column: string) => string;
}

/** What a rule has found, and the cell at which it says so; `column` is an id of the vocabulary. */
export type Statement = Fact & { readonly table: TableKind; readonly column: string };

export type AddFinding = (statement: Statement) => void;

/** A rule looks at one audited channel and says what it finds; nothing where all is well. */
export type Rule = (audited: Audited, addFinding: AddFinding) => void;

/** Id of the settings column in which a threshold stands. */
export function columnOfThreshold(name: ThresholdName): string {
  return columns[name];
}

/** The setpoint of a threshold, for a finding about it. */
export function setpointOf({ setpoint }: ThresholdResult, { unit }: Channel): OfSetpoint {
  return { setpoint: setpoint ?? NaN, unit: unit.text };
}
