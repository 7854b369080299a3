import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';
import { gaps, rowsOf } from '../../recordSheets.ts';

const bent = gaps(20, 90, 10).map((gap): [number, number] => [
  gap,
  gap <= 50 ? -0.2 * gap : -10 - 0.1 * (gap - 50),
]);

export const golden: GoldenCase = {
  because:
    'By hand: up to 50 mil and −10 V the voltage falls by 0.2 V/mil, from there by 0.1. Both zeros of T and A are −10 V, 50 mil; the monitor divides by 0.2 V/mil. ' +
    'T, toward: 15 and 20 act at −7 and −6 V, 35 and 30 mil, 15 and 20 mil from the zero; −15 and −20 at −13 and −14 V, 80 and 90 mil, −30 and −40. ' +
    'An uncertainty of 5 % puts each between T/1.05 and T/0.95, and the panel level at what 0.95·S shows: −19 is 69 mil, −11.9 V, −9.5 mil; −14.25 is −7.125, in two digits −7.1. ' +
    'A panel reading of −10 is −12 V, 70 mil, really −20 by the curve and −10 by the list; on the positive side the farther of the two is −10. ' +
    'A, away (its panel shows 12.5 at 25 mil, 75 mil and −12.5 V): 15 acts at −13 V, 80 mil, 30 mil; 25 at −15 V, which the record does not reach: its end of −14 V shows 20. −15 acts at −7 V, −15 mil; −35 at −3 V, past the record’s −4 V at 20 mil, which show −30. ' +
    'Z has its zero at −15 V, outside the record; by the list its 20 mil act at 20 + 5 V/0.2 = 45 and show −5, on the other side. ' +
    'X has its zero at −13 V, 80 mil: 15 and 20 act at 35 and 30 mil, 45 and 50 from it, by the list at 30 and 35; at 20, which is 60 mil and −11 V, the monitor shows −5. V has no measured zero and Q no direction, so that they can’t be read off a curve. ' +
    'The longest run of like steps, 50 to 90 mil, has 100 mV/mil, not the 200 of the list.',
  policy: { curve: 'linear' },
  book: book(
    [
      'Channels',
      [
        [
          'Tag',
          'Kind',
          'Measured sensitivity (mV/mil)',
          'Measured zero voltage (V)',
          'Positive direction',
          'Uncertainty (%)',
          'Reading (mil)',
        ],
        ['T', 'axial', 200, -10, 'toward', 5, -10],
        ['A', 'axial', 200, -10, 'away', null, null],
        ['Z', 'axial', 200, -15, 'toward', null, null],
        ['X', 'axial', 200, -13, 'toward', null, null],
        ['V', 'axial', 200, null, 'toward', null, null],
        ['Q', 'axial', 200, -10, null, null, null],
      ],
    ],
    [
      'Monitor',
      [
        [
          'Tag',
          'Configured sensitivity (mV/mil)',
          'Alert (mil)',
          'Danger (mil)',
          'Configured zero voltage (V)',
          'Counter alert (mil)',
          'Counter danger (mil)',
        ],
        ['T', 200, 15, 20, -10, 15, 20],
        ['A', 200, 15, 25, -10, 15, 35],
        ['Z', 200, 15, 20, -10, null, null],
        ['X', 200, 15, 20, -10, null, null],
        ['V', 200, 15, 20, -10, null, null],
        ['Q', 200, 15, 20, -10, null, null],
      ],
    ],
    [
      'Records',
      [
        ['Tag', 'Gap (mil)', 'Output (V)'],
        ...rowsOf(['T'], bent),
        ...rowsOf(['A'], bent),
        ...rowsOf(['Z'], bent),
        ...rowsOf(['X'], bent),
        ...rowsOf(['V'], bent),
        ...rowsOf(['Q'], bent),
      ],
    ],
  ),
  channels: [
    {
      tag: 'X',
      verdict: 'late',
      onCurve: { 'alert ×1': 45, 'danger ×1': 50 },
      thresholds: {
        alert: { effective: 45, verdict: 'late', panel: null },
        danger: {
          effective: 50,
          verdict: 'late',
          governedBy: 'calibration record',
          panel: null,
          interimSetpoint: null,
        },
      },
      findings: [
        'alert-late @ Monitor!C5',
        'danger-late @ Monitor!D5',
        'alert-curve-differs @ Records!B26',
        'danger-curve-differs @ Records!B26',
        'alert-has-no-interim-setpoint @ Monitor!A5',
        'danger-has-no-interim-setpoint @ Monitor!A5',
        'record-disagrees-with-list @ Records!B26',
      ],
    },
    {
      tag: 'Z',
      verdict: 'late',
      onCurve: { 'alert ×1': [null], 'danger ×1': [null] },
      thresholds: {
        alert: { effective: 40, verdict: 'late' },
        danger: {
          effective: 45,
          verdict: 'late',
          governedBy: 'listed sensitivity',
          lines: [
            {
              by: 'listed sensitivity',
              effective: 45,
              low: null,
              high: null,
              verdict: 'late',
              why: null,
              panel: null,
            },
            {
              by: 'calibration record',
              effective: null,
              low: null,
              high: null,
              verdict: 'undetermined',
              why: 'the measured zero lies outside the record',
              panel: null,
            },
          ],
          panel: null,
          interimSetpoint: null,
        },
      },
      findings: [
        'alert-curve-falls-short @ Records!B18',
        'alert-has-no-interim-setpoint @ Monitor!A4',
        'alert-late @ Monitor!C4',
        'danger-curve-falls-short @ Records!B18',
        'danger-has-no-interim-setpoint @ Monitor!A4',
        'danger-late @ Monitor!D4',
        'record-disagrees-with-list @ Records!B18',
      ],
    },
    {
      tag: 'A',
      verdict: 'late',
      onCurve: { 'alert ×1': 30, 'danger ×1': [20], 'counter alert ×1': -15, 'counter danger ×1': [-30] },
      thresholds: {
        alert: { effective: 30, verdict: 'late' },
        danger: {
          effective: null,
          verdict: 'undetermined',
          governedBy: 'calibration record',
          panel: 12,
          lines: [
            {
              by: 'listed sensitivity',
              effective: 25,
              low: null,
              high: null,
              verdict: 'within',
              why: null,
              panel: 25,
            },
            {
              by: 'calibration record',
              effective: null,
              low: null,
              high: null,
              verdict: 'undetermined',
              why: 'the record does not reach that far',
              panel: 12.5,
            },
          ],
        },
        'counter alert': { effective: -15, verdict: 'within' },
        'counter danger': { effective: null, verdict: 'undetermined' },
      },
      findings: [
        'alert-late @ Monitor!C3',
        'alert-curve-differs @ Records!B10',
        'danger-undetermined @ Monitor!D3',
        'danger-curve-falls-short @ Records!B10',
        'counter-danger-undetermined @ Monitor!G3',
        'counter-danger-curve-falls-short @ Records!B10',
        'record-disagrees-with-list @ Records!B10',
      ],
    },
    {
      tag: 'T',
      verdict: 'late',
      onCurve: { 'alert ×1': 15, 'danger ×1': 20, 'counter alert ×1': -30, 'counter danger ×1': -40 },
      thresholds: {
        alert: { effective: 15, verdict: 'within', panel: 14, real: -10, alreadyThere: false },
        danger: {
          effective: 20,
          low: 20 / 1.05,
          high: 20 / 0.95,
          verdict: 'within',
          panel: 19,
          real: -10,
          alreadyThere: false,
        },
        'counter alert': {
          effective: -30,
          verdict: 'late',
          governedBy: 'calibration record',
          panel: -7.1,
          interimSetpoint: -7.1,
          real: -20,
          alreadyThere: true,
        },
        'counter danger': {
          effective: -40,
          low: -40 / 0.95,
          high: -40 / 1.05,
          shift: 20,
          shiftFraction: 1,
          verdict: 'late',
          governedBy: 'calibration record',
          indicatedAtSetpoint: -20,
          panel: -9.5,
          interimSetpoint: -9.5,
          real: -20,
          alreadyThere: true,
        },
      },
      findings: [
        'counter-alert-late @ Monitor!F2',
        'counter-danger-late @ Monitor!G2',
        'counter-alert-curve-differs @ Records!B2',
        'counter-danger-curve-differs @ Records!B2',
        'counter-alert-interim-below-reading @ Channels!G2',
        'counter-danger-interim-below-reading @ Channels!G2',
        'record-disagrees-with-list @ Records!B2',
      ],
    },
    {
      tag: 'V',
      verdict: 'incomplete',
      onCurve: {},
      thresholds: {
        alert: { verdict: 'incomplete' },
        danger: {
          verdict: 'incomplete',
          governedBy: 'listed sensitivity',
          notJudged: ['uncertainty', 'curve', 'limit', 'full scale'],
        },
      },
      findings: ['zero-voltage-missing @ Channels!D6', 'record-disagrees-with-list @ Records!B34'],
    },
    {
      tag: 'Q',
      verdict: 'within',
      onCurve: {},
      thresholds: {
        alert: { effective: 15, verdict: 'within' },
        danger: {
          effective: 20,
          verdict: 'within',
          notJudged: ['uncertainty', 'curve', 'limit', 'full scale'],
        },
      },
      findings: ['record-disagrees-with-list @ Records!B42'],
    },
  ],
  says: [
    /Danger 25 mil cannot be shown to act: .* supports indications up to 20 mil only/,
    /Counter danger −35 mil .* up to −30 mil only/,
    /does not reach the measured zero voltage of −15 V/,
  ],
  headlines: [
    /T is past its counter danger now: panel −10, really −20 mil; counter danger is meant at −20 mil/,
    /T is past its counter alert now: panel −10, really −20 mil/,
  ],
};
