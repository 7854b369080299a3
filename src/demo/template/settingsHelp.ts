import type { settingsColumns } from '../../audit/read/tables/settingsColumns.ts';
import { probeVolts } from './entries.ts';
import type { ColumnHelp } from './templateColumn.ts';

const aboveZero = { above: 0 } as const;
const seconds = { atLeast: 0 } as const;

/** What each column of the monitor settings is for, and what may stand in it. */
export const settingsHelp: Readonly<Record<keyof typeof settingsColumns, ColumnHelp>> = {
  tag: { meaning: 'Name of the channel, the same on both sheets. Needed. Each tag once.' },
  configured: {
    meaning: 'Sensitivity by which the monitor divides, read from the monitor itself. Needed.',
    unit: 'mV/mil',
    allowed: aboveZero,
  },
  alert: { meaning: 'Alert set point as the monitor shows it. Needed.', unit: 'mil', allowed: aboveZero },
  danger: { meaning: 'Danger set point as the monitor shows it. Needed.', unit: 'mil', allowed: aboveZero },
  fullScale: { meaning: 'Upper end of what the monitor can show.', unit: 'mil', allowed: aboveZero },
  alertDelay: { meaning: 'Time for which the alert must last before it counts.', allowed: seconds },
  dangerDelay: { meaning: 'Time for which the danger must last before the relay acts.', allowed: seconds },
  multiplier: { meaning: 'Factor on the set points during start-up. Blank: none.', allowed: aboveZero },
  zeroConfigured: { meaning: 'Axial only: voltage that the monitor takes for zero position.', ...probeVolts },
  counterAlert: {
    meaning: 'Axial only: alert in the other direction, as a positive amount.',
    unit: 'mil',
    allowed: aboveZero,
  },
  counterDanger: {
    meaning: 'Axial only: danger in the other direction, as a positive amount.',
    unit: 'mil',
    allowed: aboveZero,
  },
  faultHigh: { meaning: 'Circuit-fault limit nearer to 0 V.', ...probeVolts },
  faultLow: { meaning: 'Circuit-fault limit farther from 0 V.', ...probeVolts },
  resolution: { meaning: 'Smallest step of a set point in the monitor.', unit: 'mil', allowed: aboveZero },
  detection: {
    meaning:
      'p-p (peak to peak) or 0-p (zero to peak). Blank: peak to peak. Position and loop channels have none.',
    allowed: { words: ['p-p', '0-p'] },
    warnOnly: true,
  },
  group: { meaning: 'Name of the voting group; the members of a group watch the same motion.' },
  voting: {
    meaning: 'How many of the group must act: 1oo1, 1oo2, 2oo2, 2oo3 …; the same in every row of the group.',
    allowed: { words: ['1oo1', '1oo2', '2oo2', '1oo3', '2oo3', '2oo4'] },
    warnOnly: true,
  },
  bypass: { meaning: 'yes while the channel is in bypass. Blank: no.', allowed: { words: ['yes', 'no'] } },
};
