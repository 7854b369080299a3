import type { ChannelRecord, SettingsRecord } from './records.ts';

/** A shaft vibration probe as most of the station's are. */
export const radialProbe = {
  type: 'radial',
  unit: 'mV/mil',
  uncertainty: 2,
  referenceSensitivity: 200,
  referenceGap: -9.8,
} as const satisfies ChannelRecord;

/** A thrust position probe as most of the station's are. */
export const thrustProbe = {
  type: 'thrust',
  unit: 'mV/mil',
  uncertainty: 2,
  zero: -10,
  direction: 'toward',
} as const satisfies ChannelRecord;

/** A velocity sensor on a bearing housing. */
export const housingVelocity = {
  type: 'velocity',
  unit: 'mV/(in/s)',
  uncertainty: 3,
} as const satisfies ChannelRecord;

/** What all monitor channels have in common. */
export const monitorChannel = {
  alertDelay: 3,
  dangerDelay: 1,
  bypass: 'no',
} as const satisfies SettingsRecord;

/** Monitor channel of a shaft vibration probe. */
export const radialMonitor = {
  ...monitorChannel,
  configured: 200,
  sensitivityUnit: 'mV/mil',
  unit: 'mil p-p',
  detection: 'p-p',
  step: 0.1,
  faultHigh: -2,
  faultLow: -18.5,
} as const satisfies SettingsRecord;

/** Monitor channel of a thrust position probe; set points in mil from the middle of the float. */
export const thrustMonitor = {
  ...monitorChannel,
  configured: 200,
  sensitivityUnit: 'mV/mil',
  unit: 'mil',
  step: 0.5,
  fullScale: 40,
  alert: 15,
  danger: 20,
  counterAlert: 15,
  counterDanger: 20,
  zero: -10,
} as const satisfies SettingsRecord;

/** Monitor channel of a velocity sensor on a pump's bearing housing. */
export const housingMonitor = {
  ...monitorChannel,
  configured: 100,
  sensitivityUnit: 'mV/(in/s)',
  unit: 'in/s pk',
  detection: '0-p',
  step: 0.01,
  fullScale: 1,
  alert: 0.3,
  danger: 0.5,
} as const satisfies SettingsRecord;
