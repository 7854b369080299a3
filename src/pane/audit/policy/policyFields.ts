/** One entry of the policy as a field: its path in the policy, and what may stand in it. */
export interface PolicyField {
  readonly path: string;
  readonly label: string;
  readonly unit?: string;
  /** What stands in the policy times this stands in the field. */
  readonly scale?: number;
  readonly holds: 'number' | 'unit' | 'word';
  /** The field may be empty: there is none. */
  readonly optional?: true;
  /** What must stand in it, in words. */
  readonly says: string;
}

export interface PolicyPart {
  readonly title: string;
  readonly fields: readonly PolicyField[];
}

const percent = { unit: '%', scale: 100, holds: 'number', says: 'a number above 0 and below 100' } as const;
const amount = { holds: 'number', says: 'a number above 0' } as const;

function rated(kind: string, name: string): readonly PolicyField[] {
  const path = `ratedSensitivity.${kind}`;
  return [
    { path: `${path}.value`, label: name, ...amount, optional: true },
    {
      path: `${path}.unit`,
      label: `${name}, unit`,
      holds: 'unit',
      optional: true,
      says: 'a unit of sensitivity such as mV/mil, mV/µm or mV/g, or leave both empty',
    },
  ];
}

/** The policy as a form, in the order of its weight; the decision rule has a choice of its own above it. */
export const policyParts: readonly PolicyPart[] = [
  {
    title: 'Decision',
    fields: [
      { path: 'tolerance', label: 'Tolerance on sensitivity, ±', ...percent },
      {
        path: 'coverage',
        label: 'Coverage factor where none is named',
        holds: 'number',
        says: 'a number above 0, at most 10',
      },
      { path: 'calibrationIntervalDays', label: 'A calibration is old after', unit: 'days', ...amount },
    ],
  },
  {
    title: 'Rated sensitivity',
    fields: [
      { path: 'ratedTolerance', label: 'Configured may depart from rated by ±', ...percent },
      ...rated('radial', 'Radial'),
      ...rated('axial', 'Axial'),
      ...rated('velocity', 'Velocity'),
      ...rated('acceleration', 'Acceleration'),
      ...rated('loop', 'Loop'),
    ],
  },
  {
    title: 'Gap and range',
    fields: [
      { path: 'minimumLinearRange.value', label: 'Least linear range', ...amount },
      {
        path: 'minimumLinearRange.unit',
        label: 'Least linear range, unit',
        holds: 'unit',
        says: 'a unit of displacement such as mil or µm',
      },
      { path: 'linearVolts.near', label: 'Linear from', unit: 'V', holds: 'number', says: 'a number' },
      {
        path: 'linearVolts.far',
        label: 'Linear to',
        unit: 'V',
        holds: 'number',
        says: 'a number more negative than the one above',
      },
      { path: 'gapVoltageTolerance', label: 'Gap voltages alike within', unit: 'V', ...amount },
    ],
  },
  {
    title: 'Calibration records',
    fields: [
      { path: 'recordTolerance.incremental', label: 'Each step may depart from rated by ±', ...percent },
      { path: 'recordTolerance.deviation.value', label: 'Deviation from the rated line, at most', ...amount },
      {
        path: 'recordTolerance.deviation.unit',
        label: 'Deviation, unit',
        holds: 'unit',
        says: 'a unit of displacement such as mil or µm',
      },
      {
        path: 'curve',
        label: 'Points of a record joined',
        holds: 'word',
        says: 'monotone or linear',
      },
      { path: 'curveDifference', label: 'A threshold on the curve may differ by ±', ...percent },
    ],
  },
  {
    title: 'Longest alarm delays',
    fields: [
      { path: 'delays.alert', label: 'Alert', unit: 's', holds: 'number', says: 'a number of at least 0' },
      { path: 'delays.danger', label: 'Danger', unit: 's', holds: 'number', says: 'a number of at least 0' },
    ],
  },
];
