import type { ChannelRecord, Machine, SettingsRecord } from './records.ts';
import { radialMonitor, radialProbe, thrustMonitor, thrustProbe } from './usual.ts';

const probe = { ...radialProbe, speed: 8400, limit: 5 } as const satisfies ChannelRecord;
const monitor = {
  ...radialMonitor,
  fullScale: 10,
  alert: 3,
  danger: 4.5,
  multiplier: 2,
  voting: '1oo2',
} as const satisfies SettingsRecord;

/** Power turbine: sound, but for one start-up multiplier and a thrust pair of which one probe is in bypass. */
export const powerTurbine: Machine = {
  name: 'T-101 Power turbine',
  channels: [
    {
      ...probe,
      tag: 'T101-1X',
      location: 'bearing 1, 45° right',
      measured: 198,
      measured2019: 201,
      gap: -9.7,
      reading: 1.1,
      calibrated: '2026-03-18',
    },
    {
      ...probe,
      tag: 'T101-1Y',
      location: 'bearing 1, 45° left',
      measured: 201,
      gap: -9.9,
      reading: 1.2,
      calibrated: '03/04/2026',
      remarks: 'Date copied from the field sheet as it stood: 3 April or 4 March?',
    },
    {
      ...probe,
      tag: 'T101-2X',
      location: 'bearing 2, 45° right',
      measured: 199,
      measured2019: 200,
      gap: -9.8,
      reading: 1.4,
      calibrated: '2026-03-18',
    },
    {
      ...probe,
      tag: 'T101-2Y',
      location: 'bearing 2, 45° left',
      measured: 200,
      measured2019: 199,
      gap: 9.7,
      reading: 1.3,
      calibrated: '2026-03-18',
      remarks: 'Minus sign of the gap voltage lost in typing.',
    },
    {
      ...thrustProbe,
      tag: 'T101-A1',
      location: 'thrust collar, probe 1',
      measured: 199.5,
      gap: -9.6,
      reading: 2,
      calibrated: '2026-03-18',
    },
    {
      ...thrustProbe,
      tag: 'T101-A2',
      location: 'thrust collar, probe 2',
      measured: 200.5,
      gap: -9.7,
      reading: 1.5,
      calibrated: '2026-03-18',
      remarks: 'Probe is sound. See bypass on the settings sheet.',
    },
  ],
  settings: [
    { ...monitor, slot: '1/1', tag: 'T101-1X', group: 'T101 brg 1' },
    { ...monitor, slot: '1/2', tag: 'T101-1Y', group: 'T101 brg 1' },
    {
      ...monitor,
      slot: '1/3',
      tag: 'T101-2X',
      group: 'T101 brg 2',
      multiplier: 3,
      remarks:
        'Multiplier raised from 2 to 3 for cold starts; full scale left at 10, so 3 × 4.5 can never be shown.',
    },
    { ...monitor, slot: '1/4', tag: 'T101-2Y', group: 'T101 brg 2' },
    { ...thrustMonitor, slot: '2/1', tag: 'T101-A1', group: 'T101 thrust', voting: '2oo2' },
    {
      ...thrustMonitor,
      slot: '2/2',
      tag: 'T101-A2',
      group: 'T101 thrust',
      voting: '2oo2',
      bypass: 'yes',
      remarks:
        'Put in bypass to change a card and never taken out: 2oo2 then waits for a vote that never comes.',
    },
  ],
};
