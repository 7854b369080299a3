import type { ChannelRecord, Machine, SettingsRecord } from './records.ts';
import { monitorChannel, radialMonitor, radialProbe, thrustMonitor, thrustProbe } from './usual.ts';

const lowSpeed = { ...radialProbe, speed: 8400, limit: 5.2 } as const satisfies ChannelRecord;
const highSpeed = { ...radialProbe, speed: 11800, limit: 4.8 } as const satisfies ChannelRecord;
const casing = {
  type: 'acceleration',
  unit: 'mV/g',
  uncertainty: 3,
  calibrated: '2025-11-04',
} as const satisfies ChannelRecord;
const monitor = { ...radialMonitor, fullScale: 10, voting: '1oo2' } as const satisfies SettingsRecord;
const casingMonitor = {
  ...monitorChannel,
  configured: 100,
  sensitivityUnit: 'mV/g',
  unit: 'g 0-p',
  detection: '0-p',
  step: 0.1,
  fullScale: 20,
  alert: 6,
  danger: 10,
} as const satisfies SettingsRecord;

/** Speed-up gearbox: a thrust zero set at the end of the float, a danger left high after a run-in, slips of the pen. */
export const gearbox: Machine = {
  name: 'G-101 Gearbox',
  channels: [
    {
      ...lowSpeed,
      tag: 'G101-LX',
      location: 'low-speed shaft, right',
      measured: 200,
      gap: -9.9,
      reading: 1.6,
      calibrated: '2021-10-06',
      remarks:
        'The list still has the calibration of 2021. The record of November 2025 gives 186 mV/mil: danger trips later than the list says.',
    },
    {
      ...lowSpeed,
      tag: 'G101-LY',
      location: 'low-speed shaft, left',
      measured: 203,
      gap: -9.7,
      reading: 1.5,
      calibrated: '2025-11-04',
      remarks: 'Higher at every calibration since 2022, see the history; nobody has asked why.',
    },
    {
      ...highSpeed,
      tag: 'G101-HX',
      location: 'high-speed shaft, right',
      measured: 199,
      gap: -9.8,
      reading: 1.8,
      calibrated: '2025-11-04',
    },
    {
      ...highSpeed,
      tag: 'G101-HY',
      location: 'high-speed shaft, left',
      measured: 200,
      gap: -6.2,
      asLeftGap: -9.8,
      reading: 1.7,
      calibrated: '2025-11-04',
      remarks:
        'Lock nut found loose, probe had crept in; sensitivity was right. Gapped anew, sensitivity not taken again.',
    },
    {
      ...thrustProbe,
      tag: 'G101-A1',
      location: 'thrust collar, low-speed',
      measured: 200,
      zero: -7.5,
      gap: -7.3,
      reading: 13,
      calibrated: '2025-11-04',
      lastGood: '2023-06-12',
      remarks:
        'Zero voltage was taken with the rotor at one end of its float; the true zero is 12.5 mil away.',
    },
    {
      ...casing,
      tag: 'G101-C1',
      location: 'casing, high-speed bearing',
      measured: 100.5,
      reading: 2.2,
    },
    {
      ...casing,
      tag: 'G101-C2',
      location: 'casing, low-speed bearing',
      type: 'velocity',
      measured: 99,
      reading: 1.9,
      remarks: 'Typed as velocity, but it is an accelerometer.',
    },
  ],
  settings: [
    {
      ...monitor,
      slot: '3/1',
      tag: 'G101-LX',
      alert: 3,
      danger: 4.5,
      group: 'G101 low speed',
      voting: 'any',
      remarks: 'Voting written in words: either of the two trips.',
    },
    {
      ...monitor,
      slot: '3/2',
      tag: 'G101-LY',
      alert: 5,
      danger: 4.5,
      group: 'G101 low speed',
      remarks: 'Alert raised to silence a nuisance alarm; danger now comes first.',
    },
    {
      ...monitor,
      slot: '3/3',
      tag: 'G101-HX',
      fullScale: 5,
      alert: 2.8,
      danger: 6,
      group: 'G101 high speed',
      remarks:
        'Danger raised to 6 for the run-in after the rebuild and never set back; the monitor shows no more than 5.',
    },
    {
      ...monitor,
      slot: '3/4',
      tag: 'G101-HY',
      fullScale: 5,
      alert: 2.8,
      danger: 4,
      group: 'G101 high speed',
    },
    {
      ...thrustMonitor,
      slot: '4/1',
      tag: 'G101-A1',
      alert: 5,
      danger: 15,
      counterAlert: 5,
      counterDanger: 15,
      multiplier: 2,
      remarks: 'Multiplier copied down from a vibration row; it has no place on a position channel.',
    },
    {
      ...casingMonitor,
      slot: '4/2',
      tag: 'G101-C1',
      dangerDelay: 10,
      voting: '1oo2',
      remarks: 'Delay of 10 s from commissioning still in. Second voter never named.',
    },
    { ...casingMonitor, slot: '4/3', tag: 'G101-C2' },
  ],
};
