import type { ChannelFacts, Evidence, PolicyFacts } from './facts.ts';

export const usualPolicy: PolicyFacts = {
  tolerance: 0.05,
  rule: 'guarded',
  coverage: 2,
  near: -2,
  far: -18,
  curve: 'monotone cubic',
  bypassed: null,
  faulty: null,
  groups: [],
};

export const nothing: Evidence = {
  sensitivity: null,
  uncertainty: null,
  gapVoltage: null,
  zero: null,
  record: null,
  check: null,
};

/** A radial channel that is right: 200 mV/mil configured and measured, alert 3 mil, danger 5 mil. */
export const plainChannel: ChannelFacts = {
  tag: 'V-1',
  machine: 'Pump',
  kind: 'radial',
  configured: 200,
  alert: 3,
  danger: 5,
  counterAlert: null,
  counterDanger: null,
  fullScale: null,
  multiplier: null,
  resolution: null,
  limit: null,
  reading: null,
  zeroConfigured: null,
  direction: null,
  faultHigh: null,
  faultLow: null,
  group: null,
  voting: null,
  bypass: false,
  coverage: null,
  gain: null,
  gainUncertainty: null,
  zeroUncertainty: null,
  loop: null,
  batch: '',
  sharedUncertainty: null,
  slowRoll: null,
  chainLength: null,
  found: { ...nothing, sensitivity: 200 },
  left: null,
  unusable: [],
  swing: 1,
  perMil: 1,
};

/** As found at that sensitivity. */
export function measured(sensitivity: number, more: Partial<Evidence> = {}): { readonly found: Evidence } {
  return { found: { ...nothing, sensitivity, ...more } };
}

/** As left at that sensitivity. */
export function corrected(sensitivity: number, more: Partial<Evidence> = {}): { readonly left: Evidence } {
  return { left: { ...nothing, sensitivity, ...more } };
}
