import type { ChannelRecord, Machine, SettingsRecord } from './records.ts';
import { radialMonitor, radialProbe, thrustMonitor, thrustProbe } from './usual.ts';

const calibrated = { calibrated: '2026-04-22' } as const;
const turbineProbe = {
  ...radialProbe,
  ...calibrated,
  speed: 8400,
  limit: 5,
} as const satisfies ChannelRecord;
const compressorProbe = {
  ...radialProbe,
  ...calibrated,
  speed: 11800,
  limit: 4.8,
} as const satisfies ChannelRecord;
const thrust = { ...thrustProbe, ...calibrated } as const satisfies ChannelRecord;
const turbineMonitor = {
  ...radialMonitor,
  fullScale: 10,
  alert: 3,
  danger: 4.5,
  voting: '1oo2',
} as const satisfies SettingsRecord;
const compressorMonitor = { ...turbineMonitor, alert: 2.8, danger: 4 } as const satisfies SettingsRecord;
const thrustChannel = { ...thrustMonitor, voting: '1oo2' } as const satisfies SettingsRecord;

/** Power turbine of the second train: sound, but for a channel type that was left blank. */
export const secondTurbine: Machine = {
  name: 'T-102 Power turbine, second train',
  channels: [
    {
      ...turbineProbe,
      tag: 'T102-1X',
      location: 'bearing 1, 45° right',
      measured: 199,
      gap: -9.8,
      reading: 0.9,
    },
    {
      ...turbineProbe,
      tag: 'T102-1Y',
      location: 'bearing 1, 45° left',
      measured: 201,
      gap: -9.7,
      reading: 1,
    },
    {
      ...turbineProbe,
      tag: 'T102-2X',
      location: 'bearing 2, 45° right',
      measured: 200,
      gap: -9.9,
      reading: 1.2,
    },
    {
      ...turbineProbe,
      tag: 'T102-2Y',
      location: 'bearing 2, 45° left',
      measured: 198.5,
      gap: -9.8,
      reading: 1.1,
    },
    { ...thrust, tag: 'T102-A1', location: 'thrust collar, probe 1', measured: 200, gap: -9.7, reading: 1.5 },
    {
      ...thrust,
      tag: 'T102-A2',
      location: 'thrust collar, probe 2',
      type: '',
      measured: 200.5,
      gap: -9.6,
      reading: 2,
      remarks: 'Channel type left blank: a row with a zero voltage is not taken for shaft vibration.',
    },
  ],
  settings: [
    { ...turbineMonitor, slot: '15/1', tag: 'T102-1X', group: 'T102 brg 1' },
    { ...turbineMonitor, slot: '15/2', tag: 'T102-1Y', group: 'T102 brg 1' },
    { ...turbineMonitor, slot: '15/3', tag: 'T102-2X', group: 'T102 brg 2' },
    { ...turbineMonitor, slot: '15/4', tag: 'T102-2Y', group: 'T102 brg 2' },
    { ...thrustChannel, slot: '16/1', tag: 'T102-A1', group: 'T102 thrust' },
    { ...thrustChannel, slot: '16/2', tag: 'T102-A2', group: 'T102 thrust' },
  ],
};

/** Gas compressor of the second train: every channel acts as set. */
export const secondCompressor: Machine = {
  name: 'K-102 Gas compressor, second train',
  channels: [
    {
      ...compressorProbe,
      tag: 'K102-1X',
      location: 'bearing 1, 45° right',
      measured: 200,
      gap: -9.8,
      reading: 1.2,
    },
    {
      ...compressorProbe,
      tag: 'K102-1Y',
      location: 'bearing 1, 45° left',
      measured: 198,
      gap: -9.7,
      reading: 1.3,
    },
    {
      ...compressorProbe,
      tag: 'K102-2X',
      location: 'bearing 2, 45° right',
      measured: 201,
      gap: -9.9,
      reading: 1.4,
    },
    {
      ...compressorProbe,
      tag: 'K102-2Y',
      location: 'bearing 2, 45° left',
      measured: 199.5,
      gap: -9.8,
      reading: 1.2,
    },
    {
      ...compressorProbe,
      tag: 'K102-3X',
      location: 'bearing 3, 45° right',
      measured: 200.5,
      gap: -9.7,
      reading: 1,
    },
    {
      ...compressorProbe,
      tag: 'K102-3Y',
      location: 'bearing 3, 45° left',
      measured: 199,
      gap: -9.9,
      reading: 1.1,
    },
    { ...thrust, tag: 'K102-A1', location: 'thrust collar, probe 1', measured: 200, gap: -9.6, reading: 2 },
    {
      ...thrust,
      tag: 'K102-A2',
      location: 'thrust collar, probe 2',
      measured: 199.5,
      gap: -9.7,
      reading: 1.5,
    },
  ],
  settings: [
    { ...compressorMonitor, slot: '17/1', tag: 'K102-1X', group: 'K102 brg 1' },
    { ...compressorMonitor, slot: '17/2', tag: 'K102-1Y', group: 'K102 brg 1' },
    { ...compressorMonitor, slot: '17/3', tag: 'K102-2X', group: 'K102 brg 2' },
    { ...compressorMonitor, slot: '17/4', tag: 'K102-2Y', group: 'K102 brg 2' },
    { ...compressorMonitor, slot: '18/1', tag: 'K102-3X', group: 'K102 brg 3' },
    { ...compressorMonitor, slot: '18/2', tag: 'K102-3Y', group: 'K102 brg 3' },
    { ...thrustChannel, slot: '18/3', tag: 'K102-A1', group: 'K102 thrust' },
    { ...thrustChannel, slot: '18/4', tag: 'K102-A2', group: 'K102 thrust' },
  ],
};
