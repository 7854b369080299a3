import type { TableColumn } from '../columnSpec.ts';
import { sensitivity } from '../dimensions.ts';
import { aboveZero, uncertaintyPercent, probeVolts } from './ranges.ts';
import { anySensitivity, notValue } from './understoodAs.ts';

/** What was found when the chain was calibrated. */
export const calibration = {
  measured: {
    name: 'measured sensitivity',
    also: [
      'sensitivity measured',
      'as-found sensitivity',
      'sensitivity as found',
      'found sensitivity',
      'measured scale factor',
      'scale factor measured',
      'as-found scale factor',
      'scale factor as found',
      'actual sensitivity',
    ],
    required: true,
    holds: 'number',
    dimensions: sensitivity,
    protective: true,
    understood: { ...anySensitivity, needed: true },
    help: 'What the chain really gives per unit of movement, as it was found at the calibration.',
    entry: {
      sample: { mil: '197.5', µm: '7.78' },
      meaning: 'Sensitivity found when the chain was last calibrated, before anything was adjusted. Needed.',
      unit: 'mV/mil',
      allowed: aboveZero,
    },
  },
  uncertainty: {
    name: 'uncertainty',
    also: [
      'expanded uncertainty',
      'expanded uncertainty U',
      'uncertainty U',
      'U',
      'uncertainty of measured sensitivity',
      'measured sensitivity uncertainty',
      'measurement uncertainty',
      'uncertainty of sensitivity',
      'sensitivity uncertainty',
    ],
    holds: 'number',
    dimensions: ['percent', ...sensitivity],
    usualUnit: '%',
    protective: true,
    understood: {
      matter: 'quantity',
      named: [['uncertainty']],
      not: ['as left', 'zero voltage', 'monitor gain', 'loop zero', 'loop span'],
    },
    help: 'By how much the measured sensitivity may be off.',
    entry: {
      sample: '3',
      meaning:
        'Expanded uncertainty of the measured sensitivity, in percent of it. Blank: the value alone decides.',
      allowed: uncertaintyPercent,
    },
  },
  coverage: {
    name: 'coverage factor',
    also: ['k', 'coverage', 'coverage factor k', 'k factor'],
    holds: 'number',
    protective: true,
    help: 'The factor k that the uncertainty was multiplied by; usually 2.',
    entry: {
      sample: '2',
      meaning: 'Coverage factor of that uncertainty. Blank: the one of the policy, usually 2.',
      allowed: { from: 0.1, to: 10 },
    },
  },
  sharedUncertainty: {
    name: 'shared uncertainty',
    also: ['shared part of the uncertainty', 'uncertainty shared', 'uncertainty of the batch'],
    holds: 'number',
    dimensions: ['percent', ...sensitivity],
    usualUnit: '%',
    help: 'The part of the uncertainty that all channels of a batch share, such as that of one calibrator.',
    entry: {
      sample: '1',
      meaning:
        'The part of that uncertainty that the batch shares (calibrator, cable lot), in percent, at the same coverage. Blank: nothing is shared.',
      allowed: uncertaintyPercent,
    },
  },
  batch: {
    name: 'batch',
    also: ['calibration batch', 'calibrator', 'cable lot', 'probe lot'],
    holds: 'text',
    help: 'Channels calibrated together, whose errors may hang together.',
    entry: {
      sample: 'C-2024-07',
      meaning:
        'What it was calibrated with or made from: channels with the same name share an error. Blank: its own.',
    },
  },
  gapVoltage: {
    name: 'gap voltage',
    also: ['measured gap voltage', 'as-found gap voltage', 'gap voltage as found', 'gap'],
    holds: 'number',
    dimensions: ['voltage'],
    usualUnit: 'V',
    protective: true,
    understood: {
      matter: 'quantity',
      named: [['gap voltage']],
      not: [...notValue, 'sensitivity', 'as left'],
      sizes: [{ unit: 'V', from: 1, to: 30 }],
    },
    help: 'The steady voltage of the probe at its present distance.',
    entry: {
      sample: '-9.8',
      meaning: 'Gap voltage as found; negative for the usual −24 V supply.',
      ...probeVolts,
    },
  },
  chainLength: {
    name: 'chain length',
    also: ['nominal chain length', 'chain length nominal', 'nominal length of the chain'],
    holds: 'number',
    dimensions: ['displacement'],
    usualUnit: 'm',
    understood: { matter: 'quantity', named: [['chain length']], not: notValue },
    help: 'The length of probe, cable and driver together that the driver is made for.',
    entry: {
      sample: '9',
      meaning:
        'Nominal length of probe, extension cable and driver together, in m; for a rough hint where the readings point to the cable.',
      allowed: aboveZero,
    },
  },
  referenceSensitivity: {
    name: 'reference sensitivity',
    holds: 'number',
    dimensions: sensitivity,
    understood: anySensitivity,
    help: 'The sensitivity that the chain should have by its data sheet.',
    entry: {
      sample: { mil: '200', µm: '7.87' },
      meaning:
        'Sensitivity of the same channel when it was known to be good; to find what a pair of readings points to.',
      unit: 'mV/mil',
      allowed: aboveZero,
    },
  },
  referenceGapVoltage: {
    name: 'reference gap voltage',
    holds: 'number',
    dimensions: ['voltage'],
    usualUnit: 'V',
    help: 'The gap voltage at an earlier calibration, to compare with.',
    entry: { sample: '-10', meaning: 'Gap voltage belonging to the reference sensitivity.', ...probeVolts },
  },
} as const satisfies Record<string, TableColumn>;
