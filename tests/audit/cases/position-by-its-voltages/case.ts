import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'By hand, in V/mil. S and W: 20 mil × 0.2/0.16 = 25 mil, between 25/1.03 and 25/0.97; −20 mirrored. The panel shows 20 × 0.16 × 0.97/0.2 = 15.52 there, in two digits 15; 16 shown are really 20, the danger meant. ' +
    'A limit of 24 mil lies before 25, one of 25.5 before 25.77 and −25.77. ' +
    'W has no measured zero: the ratio alone makes it late, and nothing is known of its panel and reading; N, whose ratio is right, is incomplete. ' +
    'D has no direction, and needs none as its zeros agree: 38 mil are 7.6 V, −1.4 or −16.6 V from −9 V, and the worse counts; 30 mil, −3 or −15 V, are inside −2 to −18 V (common practice, no source). ' +
    'O: 40 mil are 8 V, −2 and −18 V from −10 V, which belong to the span. R: 4 V of setpoint and 4 V of shifted zero leave 0, it acts at rest; 25 mil are 5 V, 1 V or 5 mil. F: 35 mil lie above a full scale of 30.',
  book: book(
    [
      'Channels',
      [
        [
          'Tag',
          'Kind',
          'Measured sensitivity (V/mil)',
          'Measured zero voltage (V)',
          'Positive direction',
          'Uncertainty (%)',
          'Reading (mil)',
          'Limit (mil)',
        ],
        ['S', 'axial', 0.16, -10, 'toward', 3, 16, 24],
        ['W', 'axial', 0.16, null, 'toward', 3, 16, 25.5],
        ['N', 'axial', 0.2, null, 'toward', 3, null, 30],
        ['D', 'axial', 0.2, -9, null, null, null, null],
        ['O', 'axial', 0.2, -10, 'toward', null, null, null],
        ['R', 'axial', 0.2, -6, 'toward', null, null, null],
        ['F', 'axial', 0.2, -10, 'toward', null, null, null],
      ],
    ],
    [
      'Monitor',
      [
        [
          'Tag',
          'Configured sensitivity (V/mil)',
          'Alert (mil)',
          'Danger (mil)',
          'Configured zero voltage (V)',
          'Counter danger (mil)',
          'Full scale (mil)',
        ],
        ['S', 0.2, 15, 20, -10, null, null],
        ['W', 0.2, 15, 20, -10, 20, null],
        ['N', 0.2, 15, 20, -10, null, null],
        ['D', 0.2, 30, 38, -9, null, null],
        ['O', 0.2, 30, 40, -10, 40, null],
        ['R', 0.2, 25, 20, -10, null, null],
        ['F', 0.2, 25, 35, -10, null, 30],
      ],
    ],
  ),
  channels: [
    {
      tag: 'R',
      verdict: 'unreachable',
      thresholds: {
        alert: { effective: 5, verdict: 'early', unreachable: [] },
        danger: { effective: 0, verdict: 'unreachable', unreachable: ['on the other side of zero'] },
      },
      findings: [
        'alert-early @ Monitor!C7',
        'danger-on-the-other-side-of-zero @ Monitor!D7',
        'alert-not-below-danger @ Monitor!C7',
      ],
    },
    {
      tag: 'D',
      verdict: 'unreachable',
      thresholds: {
        alert: { effective: 30, verdict: 'within', unreachable: [] },
        danger: { effective: 38, verdict: 'unreachable', unreachable: ['out of the linear reach'] },
      },
      findings: ['danger-out-of-linear-reach @ Monitor!D5'],
    },
    {
      tag: 'F',
      verdict: 'unreachable',
      thresholds: {
        alert: { effective: 25, verdict: 'within', unreachable: [], notJudged: ['uncertainty'] },
        danger: { effective: 35, verdict: 'unreachable', unreachable: ['above full scale'] },
      },
      findings: ['danger-above-full-scale @ Monitor!D8'],
    },
    {
      tag: 'S',
      verdict: 'late',
      inputs: { unitsPerVolt: 1 },
      thresholds: {
        alert: { effective: 18.75, verdict: 'late', real: 20, alreadyThere: false },
        danger: {
          effective: 25,
          low: 25 / 1.03,
          high: 25 / 0.97,
          verdict: 'late',
          indicatedAtSetpoint: 16,
          panel: 15,
          interimSetpoint: 15,
          real: 20,
          alreadyThere: true,
          beyondLimit: 'yes',
        },
      },
      findings: [
        'alert-late @ Monitor!C2',
        'danger-late @ Monitor!D2',
        'danger-beyond-limit @ Channels!H2',
        'alert-interim-below-reading @ Channels!G2',
        'danger-interim-below-reading @ Channels!G2',
      ],
    },
    {
      tag: 'W',
      verdict: 'late',
      thresholds: {
        alert: { effective: 18.75, verdict: 'late', panel: null, interimSetpoint: null },
        danger: {
          effective: 25,
          low: 25 / 1.03,
          high: 25 / 0.97,
          verdict: 'late',
          indicatedAtSetpoint: null,
          panel: null,
          real: null,
          alreadyThere: null,
          beyondLimit: 'may',
        },
        'counter danger': {
          effective: -25,
          low: -25 / 0.97,
          high: -25 / 1.03,
          verdict: 'late',
          beyondLimit: 'may',
        },
      },
      findings: [
        'alert-late @ Monitor!C3',
        'danger-late @ Monitor!D3',
        'counter-danger-late @ Monitor!F3',
        'danger-may-be-beyond-limit @ Channels!H3',
        'counter-danger-may-be-beyond-limit @ Channels!H3',
        'zero-voltage-missing @ Channels!D3',
        'alert-has-no-interim-setpoint @ Monitor!A3',
        'danger-has-no-interim-setpoint @ Monitor!A3',
        'counter-danger-has-no-interim-setpoint @ Monitor!A3',
      ],
    },
    {
      tag: 'N',
      verdict: 'incomplete',
      thresholds: {
        alert: { effective: null, low: null, high: null, verdict: 'incomplete' },
        danger: {
          effective: null,
          low: null,
          high: null,
          verdict: 'incomplete',
          beyondLimit: null,
          probabilityBeyondLimit: null,
        },
      },
      findings: ['zero-voltage-missing @ Channels!D4'],
    },
    {
      tag: 'O',
      verdict: 'within',
      thresholds: {
        alert: { effective: 30, verdict: 'within' },
        danger: {
          effective: 40,
          low: null,
          high: null,
          verdict: 'within',
          notJudged: ['uncertainty', 'limit', 'full scale'],
        },
        'counter danger': { effective: -40, verdict: 'within' },
      },
    },
  ],
};
