/** What of a channel is compared beside its thresholds' verdicts, and what a change of it is. */
export const quantities = {
  'configured sensitivity': 'changed setting',
  danger: 'changed setting',
  alert: 'changed setting',
  'counter danger': 'changed setting',
  'counter alert': 'changed setting',
  'set-point multiplier': 'changed setting',
  'full scale': 'changed setting',
  detection: 'changed setting',
  bypass: 'changed setting',
  voting: 'changed setting',
  'voting group': 'changed setting',
  'danger delay': 'changed setting',
  'alert delay': 'changed setting',
  'configured zero voltage': 'changed setting',
  'positive direction': 'changed setting',
  resolution: 'changed setting',
  limit: 'changed setting',
  kind: 'changed setting',
  'measured sensitivity': 'changed sensitivity',
  'measured zero voltage': 'changed zero',
} as const;

export type Quantity = keyof typeof quantities;

/** All quantities, in the order in which their changes are listed. */
export const quantityNames = Object.keys(quantities) as readonly Quantity[];
