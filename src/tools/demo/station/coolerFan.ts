import type { ChannelRecord, Machine, SettingsRecord } from './records.ts';
import { monitorChannel } from './usual.ts';

const sensor = {
  type: 'velocity',
  unit: 'mV/(mm/s)',
  uncertainty: 3,
  calibrated: '2025-07-02',
} as const satisfies ChannelRecord;
const transmitter = {
  type: '4-20 mA',
  unit: 'mA/(mm/s)',
  uncertainty: 2,
  calibrated: '2025-07-02',
} as const satisfies ChannelRecord;
const monitor = {
  ...monitorChannel,
  configured: 3.937,
  sensitivityUnit: 'mV/(mm/s)',
  unit: 'mm/s rms',
  detection: 'rms',
  step: 0.1,
  fullScale: 25,
  alert: 7.1,
  danger: 11,
} as const satisfies SettingsRecord;
const loop = {
  ...monitorChannel,
  configured: 0.64,
  sensitivityUnit: 'mA/(mm/s)',
  unit: 'mm/s',
  step: 0.1,
  fullScale: 25,
  alert: 7,
  danger: 11,
} as const satisfies SettingsRecord;

/** Cooler fan: a voting that still counts a sensor taken away, transmitters of 4 to 20 mA for 0 to 25 mm/s. */
export const coolerFan: Machine = {
  name: 'F-401 Cooler fan',
  channels: [
    { ...sensor, tag: 'F401-S1', location: 'fan bearing', measured: 3.95, reading: 2.4 },
    { ...sensor, tag: 'F401-S2', location: 'motor bearing', measured: 3.9, reading: 1.8 },
    {
      ...transmitter,
      tag: 'F401-L1',
      location: 'gear, upper',
      measured: 0.64,
      reading: 3.1,
      loopAtZero: 4.02,
      loopAtSpan: 19.97,
      remarks: 'Both ends of the loop were measured: a trifle off 4 and 20 mA, and good.',
    },
    {
      ...transmitter,
      tag: 'F401-L2',
      location: 'gear, lower',
      unit: '',
      measured: 0.63,
      reading: 2.9,
      remarks: 'Unit not filled in.',
    },
  ],
  settings: [
    {
      ...monitor,
      slot: '13/1',
      tag: 'F401-S1',
      group: 'F401 fan',
      voting: '2oo3',
      counterDanger: 20,
      remarks: 'Counter danger left over from a thrust channel that had this slot before.',
    },
    {
      ...monitor,
      slot: '13/2',
      tag: 'F401-S2',
      group: 'F401 fan',
      voting: '2oo3',
      remarks: 'Voting still 2oo3, though the third sensor has been taken away.',
    },
    {
      ...monitor,
      slot: '13/3',
      tag: 'F401-S3',
      remarks: 'Sensor taken away with the old motor; its monitor channel is still set up.',
    },
    {
      ...loop,
      slot: '14/1',
      tag: 'F401-L1',
      alertDelay: 5,
      remarks: 'Alert delay longer than elsewhere: the fan shakes when its blades are re-pitched.',
    },
    { ...loop, slot: '14/2', tag: 'F401-L2' },
  ],
};
