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
  /** What it is for, in a sentence; absent beside a unit, which needs none. */
  readonly help?: string;
}

export interface PolicyPart {
  readonly title: string;
  readonly fields: readonly PolicyField[];
}

const percent = { unit: '%', scale: 100, holds: 'number', says: 'a number above 0 and below 50' } as const;
const amount = { holds: 'number', says: 'a number above 0' } as const;

function rated(kind: string, name: string): readonly PolicyField[] {
  const path = `ratedSensitivity.${kind}`;
  return [
    {
      path: `${path}.value`,
      label: name,
      ...amount,
      optional: true,
      help: `What a chain of the kind “${kind}” should give. Empty: not checked.`,
    },
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
      {
        help: 'How far the measured sensitivity may be off the configured one before a threshold counts as late or early.',
        path: 'tolerance',
        label: 'Tolerance on sensitivity, ±',
        ...percent,
      },
      {
        help: 'The factor k of uncertainties that name none; 2 covers about 95 %.',
        path: 'coverage',
        label: 'Coverage factor where none is named',
        holds: 'number',
        says: 'a number from 1 to 4',
      },
      {
        help: 'A sensitivity measured longer ago is said to be old.',
        path: 'calibrationIntervalDays',
        label: 'A calibration is old after',
        unit: 'days',
        holds: 'number',
        says: 'a number from 1 to 7,305',
      },
    ],
  },
  {
    title: 'Rated sensitivity',
    fields: [
      {
        help: 'How far the configured sensitivity may be off the rated one before it looks like a slip.',
        path: 'ratedTolerance',
        label: 'Configured may depart from rated by ±',
        ...percent,
      },
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
      {
        help: 'The range over which a probe must follow in a straight line.',
        path: 'minimumLinearRange.value',
        label: 'Least linear range',
        holds: 'number',
        says: 'a number that is from 10 mil to 10,000 mil',
      },
      {
        path: 'minimumLinearRange.unit',
        label: 'Least linear range, unit',
        holds: 'unit',
        says: 'a unit of displacement such as mil or µm',
      },
      {
        help: 'The gap voltage at which the straight part begins, near the probe.',
        path: 'linearVolts.near',
        label: 'Linear from',
        unit: 'V',
        holds: 'number',
        says: 'a number from −60 to 0',
      },
      {
        help: 'The gap voltage at which the straight part ends, far from the probe.',
        path: 'linearVolts.far',
        label: 'Linear to',
        unit: 'V',
        holds: 'number',
        says: 'a number more negative than the one above',
      },
      {
        help: 'Two gap voltages no farther apart count as the same.',
        path: 'gapVoltageTolerance',
        label: 'Gap voltages alike within',
        unit: 'V',
        holds: 'number',
        says: 'a number from 0.01 to 5',
      },
    ],
  },
  {
    title: 'Calibration records',
    fields: [
      {
        help: 'How far the slope of each step of a calibration record may be off the rated one.',
        path: 'recordTolerance.incremental',
        label: 'Each step may depart from rated by ±',
        ...percent,
      },
      {
        help: 'How far a point of a record may lie off the rated line.',
        path: 'recordTolerance.deviation.value',
        label: 'Deviation from the rated line, at most',
        holds: 'number',
        says: 'a number that is from 0.001 mil to 20 mil',
      },
      {
        path: 'recordTolerance.deviation.unit',
        label: 'Deviation, unit',
        holds: 'unit',
        says: 'a unit of displacement such as mil or µm',
      },
      {
        help: 'How the points of a record are joined: by a smooth curve, or by straight lines.',
        path: 'curve',
        label: 'Points of a record joined',
        holds: 'word',
        says: 'monotone or linear',
      },
      {
        help: 'How far a threshold worked out on the curve may be off the one by the sensitivity before both are shown.',
        path: 'curveDifference',
        label: 'A threshold on the curve may differ by ±',
        ...percent,
      },
    ],
  },
  {
    title: 'Votes of members out of service',
    fields: [
      {
        help: 'What the system does with the vote of a member in bypass: counts it as no trip, as a trip, or leaves it out.',
        path: 'bypassed',
        label: 'Member in bypass',
        holds: 'word',
        optional: true,
        says: 'no-trip, trip or reduce, or leave it empty where it is not known',
      },
      {
        help: 'What the system does with the vote of a member that it marks faulty.',
        path: 'faulty',
        label: 'Member marked faulty',
        holds: 'word',
        optional: true,
        says: 'no-trip, trip or reduce, or leave it empty where it is not known',
      },
    ],
  },
  {
    title: 'Replay of recorded readings',
    fields: [
      {
        help: 'The zone of recorded times that name none themselves.',
        path: 'replay.zone',
        label: 'Time zone where times name none',
        holds: 'word',
        optional: true,
        says: 'UTC, an offset such as +01:00 or a name such as Europe/Berlin, or leave it empty',
      },
      {
        help: 'Which number is the day where a recorded date does not tell.',
        path: 'replay.dates',
        label: 'Dates such as 03/04/2026',
        holds: 'word',
        optional: true,
        says: 'day first or month first, or leave it empty where a day above 12 tells',
      },
      {
        help: 'A longer time without a reading proves nothing of what happened in it.',
        path: 'replay.maxGap',
        label: 'Longest gap between readings',
        unit: 's',
        holds: 'number',
        optional: true,
        says: 'a number above 0, or leave it empty for three times the usual time',
      },
      {
        help: 'What is taken to happen between two readings: a straight line, or that the first holds.',
        path: 'replay.between',
        label: 'Between readings',
        holds: 'word',
        says: 'line or hold',
      },
    ],
  },
  {
    title: 'Longest alarm delays',
    fields: [
      {
        help: 'An alert that waits longer is said to wait too long.',
        path: 'delays.alert',
        label: 'Alert',
        unit: 's',
        holds: 'number',
        says: 'a number from 0 to 60',
      },
      {
        help: 'A danger that waits longer is said to wait too long.',
        path: 'delays.danger',
        label: 'Danger',
        unit: 's',
        holds: 'number',
        says: 'a number from 0 to 60',
      },
    ],
  },
];
