import type { TableColumn } from '../columnSpec.ts';
import { measurand } from '../dimensions.ts';
import { aboveZero, probeVolts } from './ranges.ts';
import { notValue } from './understoodAs.ts';

/** What else is set in the monitor: positions, circuit faults, detection, voting and bypass. */
export const monitor = {
  zeroConfigured: {
    name: 'configured zero voltage',
    also: ['zero voltage configured', 'zero voltage', 'zero position voltage'],
    holds: 'number',
    dimensions: ['voltage'],
    usualUnit: 'V',
    protective: true,
    understood: { matter: 'quantity', named: [['zero voltage', 'configured']], not: notValue },
    help: 'The gap voltage that the monitor takes for zero.',
    entry: {
      sample: '-10',
      meaning: 'Axial only: voltage that the monitor takes for zero position.',
      ...probeVolts,
    },
  },
  counterAlert: {
    name: 'counter alert',
    also: ['alert counter'],
    holds: 'number',
    dimensions: measurand,
    protective: true,
    help: 'Where the monitor is set to warn in the other direction.',
    entry: {
      sample: { mil: '15', µm: '380' },
      meaning: 'Axial only: alert in the other direction, as a positive amount.',
      unit: 'mil',
      allowed: aboveZero,
    },
  },
  counterDanger: {
    name: 'counter danger',
    also: ['danger counter'],
    holds: 'number',
    dimensions: measurand,
    protective: true,
    help: 'Where the monitor is set to trip in the other direction.',
    entry: {
      sample: { mil: '20', µm: '510' },
      meaning: 'Axial only: danger in the other direction, as a positive amount.',
      unit: 'mil',
      allowed: aboveZero,
    },
  },
  faultHigh: {
    name: 'fault limit high',
    also: ['high fault limit', 'upper fault limit', 'fault high'],
    holds: 'number',
    dimensions: ['voltage'],
    usualUnit: 'V',
    protective: true,
    help: 'The gap voltage above which the monitor marks the channel faulty.',
    entry: { sample: '-2.5', meaning: 'Circuit-fault limit nearer to 0 V.', ...probeVolts },
  },
  faultLow: {
    name: 'fault limit low',
    also: ['low fault limit', 'lower fault limit', 'fault low'],
    holds: 'number',
    dimensions: ['voltage'],
    usualUnit: 'V',
    protective: true,
    help: 'The gap voltage below which the monitor marks the channel faulty.',
    entry: { sample: '-21.5', meaning: 'Circuit-fault limit farther from 0 V.', ...probeVolts },
  },
  resolution: {
    name: 'resolution',
    also: ['setpoint resolution', 'smallest setpoint step', 'setpoint step'],
    holds: 'number',
    dimensions: measurand,
    help: 'The smallest step that the panel shows.',
    entry: {
      sample: { mil: '0.1', µm: '2' },
      meaning: 'Smallest step of a set point in the monitor.',
      unit: 'mil',
      allowed: aboveZero,
    },
  },
  detection: {
    name: 'detection',
    also: ['detection method', 'amplitude detection'],
    holds: 'choice',
    protective: true,
    help: 'How the size of a vibration is counted: peak to peak, peak, or RMS.',
    entry: {
      sample: 'p-p',
      meaning:
        'p-p (peak to peak) or 0-p (zero to peak). Blank: peak to peak. Position and loop channels have none.',
      allowed: { words: ['p-p', '0-p'] },
      warnOnly: true,
    },
  },
  group: {
    name: 'voting group',
    also: ['group', 'vote group', 'trip group'],
    holds: 'text',
    protective: true,
    understood: { matter: 'text', named: [['voting group']], numbered: true },
    help: 'Channels that vote together on a trip.',
    entry: {
      sample: 'K-201 drive end',
      meaning: 'Name of the voting group; the members of a group watch the same motion.',
    },
  },
  voting: {
    name: 'voting',
    also: ['vote', 'voting logic', 'logic'],
    holds: 'choice',
    protective: true,
    understood: { matter: 'text', named: [['voting']], not: ['voting group'] },
    help: 'How many of a group must agree to trip, such as 1oo2.',
    entry: {
      sample: '2oo2',
      meaning:
        'How many of the group must act: 1oo1, 1oo2, 2oo2, 2oo3 …; the same in every row of the group.',
      allowed: { words: ['1oo1', '1oo2', '2oo2', '1oo3', '2oo3', '2oo4'] },
      warnOnly: true,
    },
  },
  bypass: {
    name: 'bypass',
    also: ['bypassed', 'in bypass'],
    holds: 'flag',
    protective: true,
    understood: { matter: 'text', named: [['bypass']] },
    help: 'Whether the channel is switched out.',
    entry: {
      sample: 'no',
      meaning: 'yes while the channel is in bypass. Blank: no.',
      allowed: { words: ['yes', 'no'] },
    },
  },
} as const satisfies Record<string, TableColumn>;
