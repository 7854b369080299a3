import type { settingsColumns } from '../../audit/read/tables/settingsColumns.ts';
import { probeVolts } from './entries.ts';
import type { ColumnHelp } from './templateColumn.ts';

const aboveZero = { above: 0 } as const;
const seconds = { atLeast: 0 } as const;

/** What each column of the monitor settings is for, and what may stand in it. */
export const settingsHelp: Readonly<Record<keyof typeof settingsColumns, ColumnHelp>> = {
  tag: {
    sample: 'K-201-1X',
    meaning: 'Name of the channel, the same on both sheets. Needed. Each tag once.',
  },
  configured: {
    sample: { mil: '200', µm: '7.87' },
    meaning: 'Sensitivity by which the monitor divides, read from the monitor itself. Needed.',
    unit: 'mV/mil',
    allowed: aboveZero,
  },
  gain: {
    sample: '0.99',
    meaning:
      'Gain of the monitor, found by injecting a known signal: indicated over injected, 1 is perfect. Blank: 1.',
    allowed: { from: 0.5, to: 2 },
  },
  gainUncertainty: {
    sample: '1',
    meaning: 'Expanded uncertainty of that gain, in percent. Blank: it counts as exact.',
    allowed: { atLeast: 0 },
  },
  alert: {
    sample: { mil: '3', µm: '75' },
    meaning: 'Alert set point as the monitor shows it. Needed.',
    unit: 'mil',
    allowed: aboveZero,
  },
  danger: {
    sample: { mil: '4.5', µm: '115' },
    meaning: 'Danger set point as the monitor shows it. Needed.',
    unit: 'mil',
    allowed: aboveZero,
  },
  fullScale: {
    sample: { mil: '10', µm: '250' },
    meaning: 'Upper end of what the monitor can show.',
    unit: 'mil',
    allowed: aboveZero,
  },
  alertDelay: {
    sample: '3',
    meaning: 'Time for which the alert must last before it counts.',
    allowed: seconds,
  },
  dangerDelay: {
    sample: '1',
    meaning: 'Time for which the danger must last before the relay acts.',
    allowed: seconds,
  },
  multiplier: {
    sample: '2',
    meaning: 'Factor on the set points during start-up. Blank: none.',
    allowed: aboveZero,
  },
  zeroConfigured: {
    sample: '-10',
    meaning: 'Axial only: voltage that the monitor takes for zero position.',
    ...probeVolts,
  },
  counterAlert: {
    sample: { mil: '15', µm: '380' },
    meaning: 'Axial only: alert in the other direction, as a positive amount.',
    unit: 'mil',
    allowed: aboveZero,
  },
  counterDanger: {
    sample: { mil: '20', µm: '510' },
    meaning: 'Axial only: danger in the other direction, as a positive amount.',
    unit: 'mil',
    allowed: aboveZero,
  },
  faultHigh: { sample: '-2.5', meaning: 'Circuit-fault limit nearer to 0 V.', ...probeVolts },
  faultLow: { sample: '-21.5', meaning: 'Circuit-fault limit farther from 0 V.', ...probeVolts },
  resolution: {
    sample: { mil: '0.1', µm: '2' },
    meaning: 'Smallest step of a set point in the monitor.',
    unit: 'mil',
    allowed: aboveZero,
  },
  detection: {
    sample: 'p-p',
    meaning:
      'p-p (peak to peak) or 0-p (zero to peak). Blank: peak to peak. Position and loop channels have none.',
    allowed: { words: ['p-p', '0-p'] },
    warnOnly: true,
  },
  group: {
    sample: 'K-201 drive end',
    meaning: 'Name of the voting group; the members of a group watch the same motion.',
  },
  voting: {
    sample: '2oo2',
    meaning: 'How many of the group must act: 1oo1, 1oo2, 2oo2, 2oo3 …; the same in every row of the group.',
    allowed: { words: ['1oo1', '1oo2', '2oo2', '1oo3', '2oo3', '2oo4'] },
    warnOnly: true,
  },
  bypass: {
    sample: 'no',
    meaning: 'yes while the channel is in bypass. Blank: no.',
    allowed: { words: ['yes', 'no'] },
  },
};
