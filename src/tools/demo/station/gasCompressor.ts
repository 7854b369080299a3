import type { ChannelRecord, Machine, SettingsRecord } from './records.ts';
import { radialMonitor, radialProbe, thrustMonitor, thrustProbe } from './usual.ts';

const probe = {
  ...radialProbe,
  referenceGap: -9.9,
  speed: 11800,
  limit: 4.8,
} as const satisfies ChannelRecord;
const monitor = {
  ...radialMonitor,
  fullScale: 10,
  alert: 2.8,
  danger: 4,
  voting: '1oo2',
} as const satisfies SettingsRecord;

/** Both cables of bearing 1 are of one wrong lot, so that their errors go together. */
const lot = {
  chainLength: 9,
  batch: 'lot C-118',
  sharedUncertainty: 1.5,
} as const satisfies ChannelRecord;

/** Gas compressor: a wrong extension cable type on one bearing, and a probe that was moved to make its gap look right. */
export const gasCompressor: Machine = {
  name: 'K-101 Gas compressor',
  channels: [
    {
      ...probe,
      tag: 'K101-1X',
      location: 'bearing 1, 45° right',
      measured: 160,
      gap: -7.9,
      reading: 2.1,
      growth: 0.02,
      calibrated: '2026-05-20',
      lastGood: '2024-09-14',
      ...lot,
      remarks:
        'Extension cables of bearing 1 replaced in the 2024 outage with a longer type from stores, both of one lot. Both probes read low. Right cable on order.',
    },
    {
      ...probe,
      tag: 'K101-1Y',
      location: 'bearing 1, 45° left',
      measured: 161,
      gap: -7.8,
      reading: 2.4,
      doubling: 120,
      calibrated: '2026-05-20',
      lastGood: '2024-09-14',
      asLeft: 161,
      asLeftUncertainty: 2,
      asLeftGap: -7.8,
      ...lot,
      remarks:
        'As 1X: same longer cable, left as it was found. Shows 2.4 mil, so the shaft really moves 3.0 mil: past the alert of 2.8 that nobody has seen.',
    },
    {
      ...probe,
      tag: 'K101-2X',
      location: 'bearing 2, 45° right',
      measured: 199,
      gap: -9.9,
      reading: 1.5,
      calibrated: '2026-05-20',
      lastGood: '2024-09-14',
      asLeft: 161.5,
      asLeftUncertainty: 2,
      asLeftGap: -7.9,
      remarks:
        'Found right. Its cable was taken for a test on 1X and a longer one put back: worse by the correction.',
    },
    {
      ...probe,
      tag: 'K101-2Y',
      location: 'bearing 2, 45° left',
      measured: 172,
      gap: -9.9,
      reading: 1.3,
      calibrated: '2026-05-21',
      lastGood: '2024-09-14',
      remarks:
        'Gap voltage was off after the outage; the probe was screwed out until it read −9.9 V again. Sensitivity not looked at.',
    },
    {
      ...thrustProbe,
      tag: 'K101-A1',
      location: 'thrust collar, probe 1',
      measured: 200,
      zero: -11.2,
      gap: -10.7,
      reading: -3.5,
      calibrated: '2026-05-20',
      lastGood: '2024-09-14',
      asLeft: 200.5,
      asLeftUncertainty: 2,
      asLeftGap: -9.5,
      asLeftZero: -10,
      remarks:
        'Bracket had moved by 6 mil: every set point acted that much to one side. Set back, rotor pushed to its stops again: zero voltage as left −10.0 V.',
    },
    {
      tag: 'K101-A2',
      location: 'thrust collar, probe 2',
      type: 'thrust',
      unit: 'mV/mil',
      uncertainty: 2,
      direction: 'toward',
      measured: 201,
      gap: -9.6,
      reading: 2.5,
      calibrated: '2026-05-20',
      remarks: 'Rotor was not pushed to its stops: no zero voltage taken for this probe.',
    },
    {
      ...probe,
      tag: 'K101-3X',
      location: 'bearing 2, spare probe',
      measured: 200,
      gap: -9.8,
      calibrated: '2026-05-21',
      remarks: 'Spare, wired to the marshalling cabinet but never given a monitor channel.',
    },
  ],
  settings: [
    { ...monitor, slot: '5/1', tag: 'K101-1X', group: 'K101 brg 1' },
    { ...monitor, slot: '5/2', tag: 'K101-1Y', group: 'K101 brg 1' },
    { ...monitor, slot: '5/3', tag: 'K101-2X', group: 'K101 brg 2' },
    { ...monitor, slot: '5/4', tag: 'K101-2Y', group: 'K101 brg 2' },
    { ...thrustMonitor, slot: '6/1', tag: 'K101-A1', group: 'K101 thrust', voting: '1oo2' },
    { ...thrustMonitor, slot: '6/2', tag: 'K101-A2', group: 'K101 thrust', voting: '1oo2' },
  ],
};
