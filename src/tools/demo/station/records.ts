/** What someone wrote into a cell: a date is written `YYYY-MM-DD`, and any other text stays text. */
export type Written = number | string;

/** Columns of the station's channel list as the files of its machines name them. */
export const channelFields = [
  'tag',
  'location',
  'type',
  'speed',
  'calibrated',
  'measured',
  // From an old calibration: its column was never deleted.
  'measured2019',
  'unit',
  'uncertainty',
  'gap',
  'referenceSensitivity',
  'referenceGap',
  'zero',
  'direction',
  'limit',
  'reading',
  'growth',
  'doubling',
  'asLeft',
  'asLeftUncertainty',
  'asLeftGap',
  'asLeftZero',
  'chainLength',
  'batch',
  'sharedUncertainty',
  'loopAtZero',
  'loopAtSpan',
  'lastGood',
  // Anything here: someone hid the row and forgot about it.
  'hidden',
  'remarks',
] as const;

/** Columns of its monitor settings. */
export const settingsFields = [
  'slot',
  'tag',
  'group',
  'voting',
  'fullScale',
  'alert',
  'danger',
  'unit',
  'detection',
  'step',
  'multiplier',
  'alertDelay',
  'dangerDelay',
  'configured',
  'sensitivityUnit',
  'gain',
  'zero',
  'counterAlert',
  'counterDanger',
  'faultHigh',
  'faultLow',
  // Noted with the settings instead of the channel list.
  'limit',
  'bypass',
  'remarks',
] as const;

/** One row of a table; what is left out is an empty cell. */
type Row<Field extends string> = Readonly<Partial<Record<Field, Written>>>;

export type ChannelRecord = Row<(typeof channelFields)[number]>;
export type SettingsRecord = Row<(typeof settingsFields)[number]>;

/** A machine of the invented station with its rows in either table. */
export interface Machine {
  readonly name: string;
  readonly channels: readonly ChannelRecord[];
  readonly settings: readonly SettingsRecord[];
}
