import type { ColumnSpec } from './columnSpec.ts';
import { measurand, sensitivity } from './dimensions.ts';
import { tagWords } from './tagKey.ts';

/** Columns of the monitor settings: one row a channel. */
export const settingsColumns = {
  tag: { name: 'tag', also: tagWords, required: true, holds: 'text' },
  configured: {
    name: 'configured sensitivity',
    also: [
      'sensitivity configured',
      'configured scale factor',
      'scale factor configured',
      'monitor sensitivity',
      'monitor scale factor',
      'scale factor',
      'set sensitivity',
    ],
    required: true,
    holds: 'number',
    dimensions: sensitivity,
  },
  gain: {
    name: 'monitor gain',
    also: ['gain of the monitor', 'monitor gain indicated/injected', 'indicated over injected'],
    holds: 'number',
  },
  gainUncertainty: {
    name: 'monitor gain uncertainty',
    also: ['uncertainty of monitor gain', 'uncertainty of the monitor gain', 'gain uncertainty'],
    holds: 'number',
    dimensions: ['percent'],
    usualUnit: '%',
  },
  alert: {
    name: 'alert',
    also: ['alert setpoint', 'alert set point', 'alert level', 'alert threshold'],
    required: true,
    holds: 'number',
    dimensions: measurand,
  },
  danger: {
    name: 'danger',
    also: [
      'danger setpoint',
      'danger set point',
      'danger level',
      'danger threshold',
      'trip',
      'trip setpoint',
    ],
    required: true,
    holds: 'number',
    dimensions: measurand,
  },
  fullScale: {
    name: 'full scale',
    also: ['full scale range', 'full-scale value', 'monitor range', 'measuring range'],
    holds: 'number',
    dimensions: measurand,
  },
  alertDelay: {
    name: 'alert delay',
    also: ['alert time delay'],
    holds: 'number',
    dimensions: ['time'],
    usualUnit: 's',
  },
  dangerDelay: {
    name: 'danger delay',
    also: ['danger time delay', 'trip delay'],
    holds: 'number',
    dimensions: ['time'],
    usualUnit: 's',
  },
  multiplier: {
    name: 'set-point multiplier',
    also: ['multiplier', 'start-up multiplier', 'trip multiplier', 'setpoint multiply'],
    holds: 'number',
  },
  zeroConfigured: {
    name: 'configured zero voltage',
    also: ['zero voltage configured', 'zero voltage', 'zero position voltage'],
    holds: 'number',
    dimensions: ['voltage'],
    usualUnit: 'V',
  },
  counterAlert: { name: 'counter alert', also: ['alert counter'], holds: 'number', dimensions: measurand },
  counterDanger: { name: 'counter danger', also: ['danger counter'], holds: 'number', dimensions: measurand },
  faultHigh: {
    name: 'fault limit high',
    also: ['high fault limit', 'upper fault limit', 'fault high'],
    holds: 'number',
    dimensions: ['voltage'],
    usualUnit: 'V',
  },
  faultLow: {
    name: 'fault limit low',
    also: ['low fault limit', 'lower fault limit', 'fault low'],
    holds: 'number',
    dimensions: ['voltage'],
    usualUnit: 'V',
  },
  resolution: {
    name: 'resolution',
    also: ['setpoint resolution', 'smallest setpoint step', 'setpoint step'],
    holds: 'number',
    dimensions: measurand,
  },
  detection: { name: 'detection', also: ['detection method', 'amplitude detection'], holds: 'choice' },
  group: { name: 'voting group', also: ['group', 'vote group', 'trip group'], holds: 'text' },
  voting: { name: 'voting', also: ['vote', 'voting logic', 'logic'], holds: 'choice' },
  bypass: { name: 'bypass', also: ['bypassed', 'in bypass'], holds: 'flag' },
} as const satisfies Record<string, ColumnSpec>;
