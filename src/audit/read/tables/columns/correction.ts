import type { TableColumn } from '../columnSpec.ts';
import { sensitivity } from '../dimensions.ts';
import { aboveZero, anyDate, uncertaintyPercent, probeVolts } from './ranges.ts';
import { anySensitivity, notValue } from './understoodAs.ts';

/** When the chain was calibrated, and how it was left. */
export const correction = {
  calibratedOn: {
    name: 'calibrated on',
    also: ['calibration date', 'date calibrated', 'calibrated', 'measured on'],
    holds: 'date',
    understood: {
      matter: 'text',
      named: [['date']],
      not: ['old', 'proposed', 'person', 'as left', 'reference'],
    },
    help: 'The day on which the sensitivity was measured.',
    entry: {
      sample: '2026-03-14',
      meaning: 'Day of the calibration that found the measured sensitivity.',
      allowed: anyDate,
    },
  },
  lastGoodOn: {
    name: 'last good on',
    also: ['last good', 'last known good', 'last good date'],
    holds: 'date',
    help: 'The last day on which the channel was known to be good.',
    entry: {
      sample: '2025-09-02',
      meaning: 'Last day on which the channel was known to be good.',
      allowed: anyDate,
    },
  },
  asLeftSensitivity: {
    name: 'as-left sensitivity',
    also: ['sensitivity as left', 'as-left scale factor'],
    holds: 'number',
    dimensions: sensitivity,
    protective: true,
    understood: anySensitivity,
    help: 'What the chain gives after it was corrected.',
    entry: {
      sample: { mil: '200.4', µm: '7.89' },
      meaning:
        'Sensitivity after the correction. Where it stands, the channel is judged by it; what was found is kept as history.',
      unit: 'mV/mil',
      allowed: aboveZero,
    },
  },
  asLeftGapVoltage: {
    name: 'as-left gap voltage',
    also: ['gap voltage as left'],
    holds: 'number',
    dimensions: ['voltage'],
    usualUnit: 'V',
    protective: true,
    understood: {
      matter: 'quantity',
      named: [['gap voltage', 'as left']],
      not: [...notValue, 'sensitivity'],
      sizes: [{ unit: 'V', from: 1, to: 30 }],
    },
    help: 'The gap voltage after the correction.',
    entry: {
      sample: '-10.1',
      meaning: 'Gap voltage after the correction. It is no zero voltage.',
      ...probeVolts,
    },
  },
  asLeftUncertainty: {
    name: 'as-left uncertainty',
    also: ['uncertainty as left'],
    holds: 'number',
    dimensions: ['percent', ...sensitivity],
    usualUnit: '%',
    protective: true,
    understood: { matter: 'quantity', named: [['uncertainty', 'as left']] },
    help: 'The uncertainty of the sensitivity after the correction.',
    entry: {
      sample: '3',
      meaning: 'Uncertainty of the as-left sensitivity. Blank: the one of the measured sensitivity counts.',
      allowed: uncertaintyPercent,
    },
  },
  asLeftZero: {
    name: 'as-left zero voltage',
    also: ['zero voltage as left'],
    holds: 'number',
    dimensions: ['voltage'],
    usualUnit: 'V',
    protective: true,
    help: 'The zero voltage after the correction.',
    entry: {
      sample: '-10',
      meaning:
        'Axial only: voltage measured at the mechanical zero after the correction. Needed once corrected.',
      ...probeVolts,
    },
  },
} as const satisfies Record<string, TableColumn>;
