import type { ChannelRecord, Machine, SettingsRecord } from './records.ts';
import { housingMonitor, housingVelocity, radialMonitor, radialProbe } from './usual.ts';

const probe = {
  ...radialProbe,
  speed: 3560,
  limit: 9,
  calibrated: '2025-09-23',
} as const satisfies ChannelRecord;
const monitor = {
  ...radialMonitor,
  fullScale: 15,
  alert: 5,
  danger: 7.5,
  voting: '1oo2',
} as const satisfies SettingsRecord;

/** Booster pump in service: one chain too sensitive, a unit slip in the settings, a probe gapped too close. */
export const boosterPump: Machine = {
  name: 'P-301 Booster pump',
  channels: [
    {
      ...probe,
      tag: 'P301-1X',
      location: 'drive end, right',
      measured: 219,
      gap: -10.9,
      reading: 2.2,
      asLeft: 201,
      remarks:
        'Found with a short extension cable: reads high. Right cable fitted the same day, as left 201.',
    },
    {
      ...probe,
      tag: 'P301-1Y',
      location: 'drive end, left',
      measured: 201,
      gap: 'about −10',
      reading: 2.1,
      asLeft: 'as before',
      remarks: 'Gap voltage only guessed from the bar graph; as left “as before”.',
    },
    {
      ...probe,
      tag: 'P301-2X',
      location: 'non-drive end, right',
      measured: 199,
      gap: -9.8,
      reading: 48,
      remarks: 'Chain is right; the monitor reads absurdly high. See settings.',
    },
    {
      ...probe,
      tag: 'P301-2Y',
      location: 'non-drive end, left',
      measured: 200,
      gap: -2.6,
      reading: 1.9,
      lastGood: '2024-02-15',
      remarks: 'Probe gapped far too close after the seal change.',
    },
    {
      ...housingVelocity,
      tag: 'P301-S1',
      location: 'drive end housing',
      measured: 100,
      reading: 0.11,
      growth: 0.001,
      doubling: 90,
      calibrated: '2025-09-23',
      remarks: 'Trend entered twice: 0.001 in/s a day by one shift, doubling in 90 days by the other.',
    },
    {
      ...housingVelocity,
      tag: 'P301-S2',
      location: 'non-drive end housing',
      measured: 101,
      reading: '#REF!',
      calibrated: '2025-09-23',
      remarks: 'Reading was linked to a trend sheet that has been deleted.',
    },
  ],
  settings: [
    { ...monitor, slot: '9/1', tag: 'P301-1X', group: 'P301 brg 1' },
    { ...monitor, slot: '9/2', tag: 'P301-1Y', group: 'P301 brg 1' },
    {
      ...monitor,
      slot: '9/3',
      tag: 'P301-2X',
      group: 'P301 brg 2',
      configured: 7.87,
      remarks: 'Metric figure (7.87 mV/µm) typed where mV/mil is set.',
    },
    {
      ...monitor,
      slot: '9/4',
      tag: 'P301-2Y',
      group: 'P301 brg 2',
      multiplier: 2,
      remarks: 'Only channel of the pump with a start-up multiplier.',
    },
    { ...housingMonitor, slot: '10/1', tag: 'P301-S1', group: 'P301 housing', voting: '1oo2' },
    {
      ...housingMonitor,
      slot: '10/2',
      tag: 'P301-S2',
      group: 'P301 housing',
      voting: '2oo2',
      bypass: 'see permit',
      remarks: 'Voting differs from S1. Bypass not answered with yes or no.',
    },
  ],
};
