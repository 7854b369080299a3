/** What someone wrote into a cell: a date is written `YYYY-MM-DD`, and any other text stays text. */
export type Written = number | string;

/** One row of the station's channel list; what is left out is an empty cell. */
export interface ChannelRecord {
  readonly tag?: string;
  readonly location?: string;
  readonly type?: string;
  readonly measured?: Written;
  /** From an old calibration: its column was never deleted. */
  readonly measured2019?: Written;
  readonly unit?: string;
  readonly uncertainty?: Written;
  readonly gap?: Written;
  readonly referenceSensitivity?: Written;
  readonly referenceGap?: Written;
  readonly zero?: Written;
  readonly direction?: string;
  readonly speed?: Written;
  readonly limit?: Written;
  readonly reading?: Written;
  readonly growth?: Written;
  readonly doubling?: Written;
  readonly calibrated?: Written;
  readonly lastGood?: Written;
  readonly asLeft?: Written;
  readonly asLeftUncertainty?: Written;
  readonly asLeftGap?: Written;
  readonly asLeftZero?: Written;
  readonly chainLength?: Written;
  readonly batch?: string;
  readonly sharedUncertainty?: Written;
  readonly loopAtZero?: Written;
  readonly loopAtSpan?: Written;
  readonly remarks?: string;
  /** Someone hid this row and forgot about it. */
  readonly hidden?: true;
}

/** One row of the station's monitor settings; what is left out is an empty cell. */
export interface SettingsRecord {
  readonly slot?: string;
  readonly tag?: string;
  readonly configured?: Written;
  readonly sensitivityUnit?: string;
  readonly gain?: Written;
  readonly fullScale?: Written;
  readonly alert?: Written;
  readonly danger?: Written;
  readonly unit?: string;
  readonly detection?: string;
  readonly step?: Written;
  readonly alertDelay?: Written;
  readonly dangerDelay?: Written;
  readonly multiplier?: Written;
  readonly zero?: Written;
  readonly counterAlert?: Written;
  readonly counterDanger?: Written;
  readonly faultHigh?: Written;
  readonly faultLow?: Written;
  readonly group?: string;
  readonly voting?: string;
  readonly bypass?: string;
  /** Noted with the settings instead of the channel list. */
  readonly limit?: Written;
  readonly remarks?: string;
}

/** A machine of the invented station with its rows in either table. */
export interface Machine {
  readonly name: string;
  readonly channels: readonly ChannelRecord[];
  readonly settings: readonly SettingsRecord[];
}
