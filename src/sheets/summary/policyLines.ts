import type { Policy } from '../../audit/model/policy.ts';
import { amount, percent } from '../../audit/model/wording.ts';
import { heading, lastColumn, wide, type Entry } from './layout.ts';

type Statement = readonly [name: string, value: string, words: string];

/** What a policy says of members out of service, for people. */
const outWords = { 'no-trip': 'no vote', trip: 'a vote to trip', reduce: 'the others vote' } as const;

function outWord(policy: Policy['bypassed']): string {
  return policy === null ? 'not said' : outWords[policy];
}

/** Each part of the policy: its name, its value, and what it does. */
const statements: { readonly [Part in keyof Policy]: (value: Policy[Part]) => readonly Statement[] } = {
  tolerance: (value) => [
    ['Tolerance', percent(value), 'Accepted departure of the measured from the configured sensitivity.'],
  ],
  rule: (value) => [
    [
      'Decision rule',
      value,
      value === 'guarded'
        ? 'The whole interval of the uncertainty decides, where an uncertainty is given.'
        : 'The measured value alone decides; its uncertainty is not looked at.',
    ],
  ],
  coverage: (value) => [
    ['Coverage factor', amount(value, ''), 'Of an uncertainty for which no column names one.'],
  ],
  calibrationIntervalDays: (value) => [
    ['Calibration interval', amount(value, 'days'), 'An older calibration is reported.'],
  ],
  ratedSensitivity: (rated) =>
    Object.entries(rated).map(([kind, value]): Statement => [
      `Rated, ${kind}`,
      value === null ? 'none' : amount(value.value, value.unit),
      `Configured sensitivities of ${kind} channels are compared with it.`,
    ]),
  ratedTolerance: (value) => [
    ['Rated tolerance', percent(value), 'Accepted departure of the configured from the rated sensitivity.'],
  ],
  minimumLinearRange: ({ value, unit }) => [
    ['Least linear range', amount(value, unit), 'A displacement chain that covers less is reported.'],
  ],
  linearVolts: ({ near, far }) => [
    [
      'Linear, near end',
      amount(near, 'V'),
      'Gap voltage at the near end of the span in which a chain is taken as linear.',
    ],
    ['Linear, far end', amount(far, 'V'), 'Gap voltage at its far end.'],
  ],
  gapVoltageTolerance: (value) => [
    [
      'Gap tolerance',
      amount(value, 'V'),
      'Gap voltages closer than this count as the same when a cause is looked for.',
    ],
  ],
  recordTolerance: ({ incremental, deviation }) => [
    [
      'Record, each step',
      percent(incremental),
      'Accepted departure of an incremental sensitivity of a calibration record from the rated one.',
    ],
    [
      'Record, deviation',
      amount(deviation.value, deviation.unit),
      'Accepted deviation of a point of a record from the line of rated slope.',
    ],
  ],
  curve: (value) => [
    [
      'Curve',
      value,
      value === 'monotone'
        ? 'The points of a record are joined by a monotone cubic.'
        : 'The points of a record are joined by straight pieces.',
    ],
  ],
  curveDifference: (value) => [
    [
      'Curve difference',
      percent(value),
      'A threshold on the record’s curve that differs more from the one by the single sensitivity is reported.',
    ],
  ],
  replay: ({ zone, dates, maxGap, between }) => [
    ['Replay, time zone', zone ?? 'as written', 'Of recorded times that name no offset.'],
    ['Replay, dates', dates ?? 'as told', 'Order of day and month in recorded times such as 03/04/2026.'],
    [
      'Replay, longest gap',
      maxGap === null ? '3 × usual' : amount(maxGap, 's'),
      'Readings farther apart leave what is between them unknown; the usual time is that of the channel.',
    ],
    [
      'Replay, between',
      between,
      between === 'line' ? 'Readings are joined by straight lines.' : 'A reading holds until the next one.',
    ],
  ],
  bypassed: (value) => [
    [
      'Members in bypass',
      outWord(value),
      value === null
        ? 'Taken as no vote. Ask what the system does with the vote of a member in bypass.'
        : 'What the system does with the vote of a member in bypass.',
    ],
  ],
  faulty: (value) => [
    [
      'Faulty members',
      outWord(value),
      value === null
        ? 'Taken as no vote. Ask what the system does with the vote of a member that it marks faulty.'
        : 'What the system does with the vote of a member that it marks faulty.',
    ],
  ],
  groups: (groups) =>
    groups.map(({ machine, group, bypassed, faulty }): Statement => [
      `Group ${group}${machine === '' ? '' : `, ${machine}`}`,
      `bypassed: ${outWord(bypassed)}; faulty: ${outWord(faulty)}`,
      'What this group does where it differs from the site; “not said” is as the site.',
    ]),
  delays: ({ alert, danger }) => [
    ['Longest alert delay', amount(alert, 's'), 'A longer delay of alert is reported.'],
    ['Longest danger delay', amount(danger, 's'), 'A longer delay of danger is reported.'],
  ],
};

/** The policy in full, in plain words, over as many columns as the page has. */
export function policyLines(policy: Policy, columns: number = lastColumn): readonly (readonly Entry[])[] {
  const rest = columns - 4;
  return [
    heading('Policy that was applied', columns),
    [wide('Part', 'header', 2), wide('Value', 'header', 2), wide('What it does', 'header', rest)],
    ...policyStatements(policy).map(([name, value, words]): readonly Entry[] => [
      wide(name, 'strong', 2),
      wide(value, 'wrapped', 2),
      wide(words, 'wrapped', rest),
    ]),
  ];
}

function policyStatements(policy: Policy): readonly Statement[] {
  const said: Statement[] = [];
  const say = <Part extends keyof Policy>(part: Part, value: Policy[Part]): void => {
    said.push(...statements[part](value));
  };
  for (const part of Object.keys(statements) as (keyof Policy)[]) say(part, policy[part]);
  return said;
}
