import type { ChannelRecord, Machine, SettingsRecord } from './records.ts';
import { radialMonitor, radialProbe } from './usual.ts';

const probe = {
  ...radialProbe,
  speed: 3560,
  calibrated: '2026-06-09',
  lastGood: '2025-01-20',
} as const satisfies ChannelRecord;
const monitor = {
  ...radialMonitor,
  fullScale: 15,
  alert: 5,
  danger: 7,
  group: 'P303 brg 1',
  voting: '1oo2',
} as const satisfies SettingsRecord;

/** Seal oil pump: the shaft sleeve under both probes was renewed in another alloy. */
export const sealOilPump: Machine = {
  name: 'P-303 Seal oil pump',
  channels: [
    {
      ...probe,
      tag: 'P303-1X',
      location: 'drive end, right',
      measured: 178,
      gap: -10.5,
      reading: 1.7,
      remarks:
        'Shaft sleeve renewed in another alloy in 2025: sensitivity low though the gap voltage went up. Same on both probes. Driver still set to the old alloy.',
    },
    {
      ...probe,
      tag: 'P303-1Y',
      location: 'drive end, left',
      measured: 179,
      gap: -10.6,
      reading: 1.6,
      asLeftGap: -11.4,
      remarks: 'As 1X: same sleeve. Driver set to the new alloy, and turned too far: see its record as left.',
    },
  ],
  settings: [
    {
      ...monitor,
      slot: '11/5',
      tag: 'P303-1X',
      limit: 8,
      remarks: 'Limit of this pump noted here, not in the channel list.',
    },
    { ...monitor, slot: '11/6', tag: 'P303-1Y', limit: 8 },
  ],
};
