import type { ChannelRecord, Machine, SettingsRecord } from './records.ts';
import { monitorChannel, radialMonitor, radialProbe, thrustProbe } from './usual.ts';

const probe = {
  ...radialProbe,
  unit: 'mV/µm',
  referenceSensitivity: 7.87,
  speed: 9600,
  limit: 120,
  calibrated: '2026-02-11',
} as const satisfies ChannelRecord;
const thrust = { ...thrustProbe, unit: 'mV/µm', calibrated: '2026-02-11' } as const satisfies ChannelRecord;
const monitor = {
  ...radialMonitor,
  configured: 7.874,
  sensitivityUnit: 'mV/µm',
  unit: 'µm p-p',
  step: 1,
  fullScale: 200,
  alert: 65,
  danger: 100,
  voting: '1oo2',
} as const satisfies SettingsRecord;
const thrustChannel = {
  ...monitorChannel,
  configured: 7.874,
  sensitivityUnit: 'mV/µm',
  unit: 'µm',
  step: 10,
  fullScale: 1000,
  alert: 400,
  danger: 600,
  zero: -10,
  group: 'K201 thrust',
  voting: '1oo2',
} as const satisfies SettingsRecord;

/** Recycle compressor, a metric machine: one probe measured too roughly to tell, and slips of a metric sheet. */
export const recycleCompressor: Machine = {
  name: 'K-201 Recycle compressor (metric)',
  channels: [
    { ...probe, tag: 'K201-1X', location: 'bearing 1, right', measured: 7.81, gap: -9.8, reading: 31 },
    { ...probe, tag: 'K201-1Y', location: 'bearing 1, left', measured: 7.9, gap: -9.6, reading: 28 },
    {
      ...probe,
      tag: 'K201-2X',
      location: 'bearing 2, right',
      measured: 7.6,
      uncertainty: 6,
      gap: -9.7,
      reading: 35,
      lastGood: '2023-08-30',
      remarks:
        'Measured in place with a worn micrometer head, poor access: ± 6 % at best. To be repeated on the bench.',
    },
    {
      ...probe,
      tag: 'K201-2Y',
      location: 'bearing 2, left',
      measured: '7,88',
      gap: -9.9,
      reading: 33,
      remarks: 'Pasted from a metric field sheet with a decimal comma, so the cell holds text.',
    },
    {
      ...thrust,
      tag: 'K201-A1',
      location: 'thrust collar, probe 1',
      measured: 7.86,
      gap: -9.4,
      reading: 80,
    },
    {
      ...thrust,
      tag: 'K201-A2',
      location: 'thrust collar, probe 2',
      measured: 7.9,
      zero: 9.4,
      direction: '',
      gap: -9.1,
      reading: 70,
      remarks:
        'Side of the collar on which this probe sits not noted, so its positive direction is not known; the sign of its zero was lost on the way to the office as well.',
    },
  ],
  settings: [
    { ...monitor, slot: '7/1', tag: 'K201-1X', group: 'K201 brg 1' },
    {
      ...monitor,
      slot: '7/2',
      tag: 'K201-1Y',
      group: 'K201 brg 1',
      detection: '0-p',
      remarks: 'Detection typed as 0-p beside a unit of µm p-p: one of them is wrong.',
    },
    { ...monitor, slot: '7/3', tag: 'K201-2X', group: 'K201 brg 2' },
    { ...monitor, slot: '7/4', tag: 'K201-2Y', group: 'K201 brg 2' },
    {
      ...thrustChannel,
      slot: '8/1',
      tag: 'K201-A1',
      faultHigh: -6,
      faultLow: -18.5,
      remarks: 'Fault limit −6 V typed for −2 V: the monitor marks the channel faulty before it trips.',
    },
    { ...thrustChannel, slot: '8/2', tag: 'K201-A2' },
  ],
};
