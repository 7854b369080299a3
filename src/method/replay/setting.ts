/** A level in the unit of the readings, and the times in s from which another one holds. */
export interface LevelOverTime {
  readonly level: number;
  /** In order of time. */
  readonly later: readonly { readonly from: number; readonly level: number }[];
}

/** How a record is read and when a relay acts. */
export interface ReplaySetting {
  /** Alarm delay in s, 0 or above. */
  readonly delay: number;
  /** Neighbours farther apart than this, in s, leave what is between them unknown; `Infinity`: none do. */
  readonly maxGap: number;
  /** Between neighbours: straight, or the older value until the newer sample. */
  readonly between: 'line' | 'hold';
  /** Times in s closer than this are the same. */
  readonly slack: number;
  /** An alarm that acted returns below its level less this, in the unit of the readings; `null`: it latches. */
  readonly deadband: number | null;
}

/** When a relay acted, in s; `NaN` where it did not within the record. */
export interface Acts {
  /** What is unknown taken as not beyond. */
  readonly proven: number;
  /** What is unknown taken as beyond. */
  readonly earliest: number;
}

/** One time that an alarm acted, with what is unknown taken as not beyond; `returned` is `NaN` while it stands. */
export interface AlarmPeriod {
  readonly acted: number;
  readonly returned: number;
}

/** A level that holds throughout. */
export function constantLevel(level: number): LevelOverTime {
  return { level, later: [] };
}
