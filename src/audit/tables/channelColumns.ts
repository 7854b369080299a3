import type { ColumnSpec } from './columnSpec.ts';
import { growth, measurand, sensitivity } from './dimensions.ts';
import { tagWords } from './tagWords.ts';

/** Columns of the channel list: one row a channel. */
export const channelColumns = {
  tag: { name: 'tag', also: tagWords, required: true, holds: 'text' },
  machine: { name: 'machine', also: ['machine name', 'machine tag', 'equipment'], holds: 'text' },
  location: { name: 'location', also: ['position', 'probe location', 'bearing'], holds: 'text' },
  kind: {
    name: 'kind',
    also: ['channel kind', 'sensor kind', 'type', 'channel type', 'sensor type'],
    holds: 'choice',
  },
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
  },
  uncertainty: {
    name: 'uncertainty',
    also: [
      'expanded uncertainty',
      'measurement uncertainty',
      'uncertainty of sensitivity',
      'sensitivity uncertainty',
    ],
    holds: 'number',
    dimensions: ['percent', ...sensitivity],
    usualUnit: '%',
  },
  coverage: {
    name: 'coverage factor',
    also: ['k', 'coverage', 'coverage factor k', 'k factor'],
    holds: 'number',
  },
  gapVoltage: {
    name: 'gap voltage',
    also: ['measured gap voltage', 'as-found gap voltage', 'gap voltage as found', 'gap'],
    holds: 'number',
    dimensions: ['voltage'],
    usualUnit: 'V',
  },
  referenceSensitivity: { name: 'reference sensitivity', holds: 'number', dimensions: sensitivity },
  referenceGapVoltage: {
    name: 'reference gap voltage',
    holds: 'number',
    dimensions: ['voltage'],
    usualUnit: 'V',
  },
  zeroMeasured: {
    name: 'measured zero voltage',
    also: ['zero voltage measured', 'zero voltage', 'as-found zero voltage'],
    holds: 'number',
    dimensions: ['voltage'],
    usualUnit: 'V',
  },
  direction: { name: 'positive direction', also: ['direction', 'normal direction'], holds: 'choice' },
  speed: {
    name: 'speed',
    also: ['rated speed', 'running speed', 'shaft speed'],
    holds: 'number',
    dimensions: ['frequency'],
    usualUnit: 'r/min',
  },
  limit: {
    name: 'limit',
    also: [
      'displacement limit',
      'greatest acceptable displacement',
      'limit at danger',
      'maximum displacement',
    ],
    holds: 'number',
    dimensions: measurand,
  },
  reading: {
    name: 'present reading',
    also: ['reading', 'indicated reading', 'present indication', 'current reading'],
    holds: 'number',
    dimensions: measurand,
  },
  growth: {
    name: 'growth per day',
    also: ['growth', 'growth rate', 'daily growth'],
    holds: 'number',
    dimensions: growth,
  },
  doubling: {
    name: 'doubling time',
    also: ['doubling time days'],
    holds: 'number',
    dimensions: ['time'],
    usualUnit: 'day',
  },
  calibratedOn: {
    name: 'calibrated on',
    also: ['calibration date', 'date calibrated', 'calibrated', 'measured on'],
    holds: 'date',
  },
  lastGoodOn: {
    name: 'last good on',
    also: ['last good', 'last known good', 'last good date'],
    holds: 'date',
  },
  asLeftSensitivity: {
    name: 'as-left sensitivity',
    also: ['sensitivity as left', 'as-left scale factor'],
    holds: 'number',
    dimensions: sensitivity,
  },
  asLeftGapVoltage: {
    name: 'as-left gap voltage',
    also: ['gap voltage as left'],
    holds: 'number',
    dimensions: ['voltage'],
    usualUnit: 'V',
  },
  asLeftUncertainty: {
    name: 'as-left uncertainty',
    also: ['uncertainty as left'],
    holds: 'number',
    dimensions: ['percent', ...sensitivity],
    usualUnit: '%',
  },
} as const satisfies Record<string, ColumnSpec>;
