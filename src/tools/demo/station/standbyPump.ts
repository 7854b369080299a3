import type { ChannelRecord, Machine, SettingsRecord } from './records.ts';
import { housingMonitor, housingVelocity, radialMonitor, radialProbe } from './usual.ts';

const probe = { ...radialProbe, speed: 3560, limit: 9 } as const satisfies ChannelRecord;
const monitor = { ...radialMonitor, fullScale: 15, alert: 5, danger: 7.5 } as const satisfies SettingsRecord;

/** Standby pump that nobody looks after: records with wrong dates, a tag twice, values missing. */
export const standbyPump: Machine = {
  name: 'P-302 Booster pump, standby',
  channels: [
    {
      ...probe,
      tag: 'P302-1X',
      location: 'drive end, right',
      measured: 198,
      gap: -9.7,
      calibrated: '2062-03-11',
      remarks: 'Year of the calibration mistyped.',
    },
    {
      ...probe,
      tag: 'P302-1Y',
      location: 'drive end, left',
      measured: 200,
      gap: -9.8,
      calibrated: '2025-02-03',
      lastGood: '2025-06-12',
      remarks: 'Last good lies after the calibration: dates swapped.',
    },
    {
      ...probe,
      tag: 'P302-2X',
      location: 'non-drive end, right',
      measured: 199,
      gap: -9.9,
      calibrated: '2023-05-10',
      remarks: 'Old row, should have been deleted when the probe was renewed.',
    },
    {
      ...probe,
      tag: 'P302-2X',
      location: 'non-drive end, right',
      measured: 186,
      gap: -9.2,
      calibrated: '2026-04-14',
      remarks: 'New probe, same tag as the row above.',
    },
    {
      ...probe,
      tag: 'P302-2Y',
      location: 'non-drive end, left',
      measured: 201,
      gap: -9.8,
      speed: 0,
      calibrated: '2026-04-14',
      hidden: true,
      remarks: 'Speed entered as 0 because the pump stands. Row hidden for a print-out.',
    },
    {
      ...housingVelocity,
      tag: 'P302-S1',
      location: 'drive end housing',
      measured: 99,
      calibrated: '2026-04-14',
    },
    {
      ...housingVelocity,
      tag: 'P302-S2',
      location: 'non-drive end housing',
      remarks: 'Not measured: pump was running when the crew came.',
    },
    {
      location: 'non-drive end, third probe',
      type: 'radial',
      measured: 200.5,
      unit: 'mV/mil',
      gap: -9.8,
      remarks: 'New probe, tag to follow.',
    },
  ],
  settings: [
    {
      ...monitor,
      slot: '11/1',
      tag: 'P302-1X',
      group: 'P302 brg 1',
      remarks: 'Voting of the standby pump not in the papers.',
    },
    { ...monitor, slot: '11/2', tag: 'P302-1Y', group: 'P302 brg 1' },
    { ...monitor, slot: '11/3', tag: 'P302-2X', group: 'P302 brg 2', voting: '1oo2' },
    { ...monitor, slot: '11/4', tag: 'P302-2Y', group: 'P302 brg 2', voting: '1oo2' },
    {
      ...housingMonitor,
      slot: '12/1',
      tag: 'P302-S1',
      unit: 'i/s',
      remarks: 'Unit of the set points mistyped.',
    },
    { ...housingMonitor, slot: '12/2', tag: 'P302-S2' },
  ],
};
