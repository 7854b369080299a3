import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';
import { gaps, rowsOf, straight } from '../../recordSheets.ts';

/** A record from 47 to 53 mil that falls by so many V/mil up to 50 mil, by half as much from there. */
const bent = (steep: number): [number, number][] =>
  gaps(47, 53, 1).map((gap) => [gap, gap <= 50 ? -steep * gap : -steep * (50 + (gap - 50) / 2)]);

export const golden: GoldenCase = {
  because:
    'By hand, 200 mV/mil configured. K: the list has 200, a check with a known vibration 160, 5 mil act at 5 by the one and at 6.25 by the other, past a limit of 6; a straight record of 200 from 47 to 53 mil is straight over 6 mil, which the 6.25 leave. ' +
    'I: by the list of 160, 5 mil act at 6.25; by a record that falls by 0.16 V/mil before and 0.08 after 50 mil at 1 V/0.12 = 8.33, which its 6 mil can’t show: no setpoint is offered, though 5 mil show 0.6 V/0.2 = 3, less 5 % 2.85; what can’t be shown to act is not counted against the limit of 8. ' +
    'B: 10 % of uncertainty leave 200 of 200 undetermined, 0.2 and 0.1 V/mil put 5 mil at 1 V/0.15 = 6.67, past the record: it is the later one. ' +
    'P: a gap of −2.4 V leaves 2·0.4/0.2 = 4 mil, so 5 mil can’t act, though 5.5 are shown. Y is in bypass: 5.5 mil shown trip nothing. M: 5 mil shown trip 5, and are not silent; multiplied by 3 they are meant at 15. ' +
    'U: 5/0.95 = 5.263 may act beyond a limit of 5.2. J: 5 mil act at 1000/210 = 4.762 by the list, before it with its 5 %, and at 5 by the record, which may not be. ' +
    'M has a limit of 6, which the danger of a start-up, 15 mil, is not held to. B runs at 3600 r/min: its alert goes from 76.2 µm, A, to 101.6, B (ISO 20816-3, from memory: 80 µm), and a danger that can’t be shown to act is in no zone.',
  policy: { curve: 'linear' },
  book: book(
    [
      'Channels',
      [
        [
          'Tag',
          'Kind',
          'Measured sensitivity (mV/mil)',
          'Gap voltage (V)',
          'Uncertainty (%)',
          'Reading (mil)',
          'Limit (mil)',
          'Speed (r/min)',
        ],
        ['K', 'radial', 200, -10, null, null, 6],
        ['I', 'radial', 160, -8, 5, null, 8],
        ['B', 'radial', 200, -10, 10, null, null, 3600],
        ['P', 'radial', 200, -2.4, null, 5.5, null],
        ['Y', 'radial', 200, null, null, 5.5, 6],
        ['M', 'radial', 200, null, null, 5, 6],
        ['U', 'radial', 200, null, 5, null, 5.2],
        ['J', 'radial', 210, -10, 5, null, 5.2],
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
          'Bypass',
          'Set-point multiplier',
        ],
        ['K', 200, 3, 5, null, null],
        ['I', 200, 3, 5, null, null],
        ['B', 200, 3, 5, null, null],
        ['P', 200, 3, 5, null, null],
        ['Y', 200, 3, 5, 'yes', null],
        ['M', 200, 3, 5, null, 3],
        ['U', 200, 3, 5, null, null],
        ['J', 200, 3, 5, null, null],
      ],
    ],
    [
      'Records',
      [
        ['Tag', 'Gap (mil)', 'Output (V)'],
        ...rowsOf(['K'], straight(200, gaps(47, 53, 1))),
        ...rowsOf(['I'], bent(0.16)),
        ...rowsOf(['B'], bent(0.2)),
        ...rowsOf(['J'], straight(200, gaps(47, 53, 1))),
      ],
    ],
    [
      'Shaker',
      [['Tag', 'Displacement (mil p-p)', 'Output (mV p-p)'], ...[2, 4, 6].map((at) => ['K', at, 160 * at])],
    ],
  ),
  // Readings past what was meant first, then what is critical, then the rest; by kind, and of one kind in the order of channels.
  attention: [
    'critical past-danger P danger',
    'critical past-danger Y danger',
    'warning past-alert Y alert',
    'critical unreachable K danger',
    'critical unreachable P danger',
    'critical in-bypass Y',
    'critical late I danger',
    'critical beyond-limit K danger',
    'critical undetermined B danger',
    'critical undetermined J danger',
    'critical may-be-beyond-limit J danger',
    'critical may-be-beyond-limit U danger',
    'warning late K alert',
    'warning late I alert',
    'warning late B alert',
    'warning undetermined J alert',
    'warning finding K static-and-dynamic-disagree',
    'warning finding I record-disagrees-with-list',
    'warning finding B record-disagrees-with-list',
  ],
  headlines: [
    /P is past its danger now: panel 5\.5, really 5\.5 mil; danger is meant at 5 mil/,
    /U danger may act beyond the machine limit of 5\.2 mil: it acts at up to 5\.26 mil by the listed sensitivity/,
  ],
  channels: [
    {
      tag: 'K',
      verdict: 'unreachable',
      thresholds: {
        alert: { effective: 3.75, verdict: 'late', governedBy: 'known vibration', panel: 2.4 },
        danger: {
          effective: 6.25,
          verdict: 'unreachable',
          governedBy: 'known vibration',
          unreachable: ['out of the linear reach'],
          panel: 4,
          interimSetpoint: null,
          beyondLimit: 'yes',
        },
      },
      findings: [
        'alert-late @ Monitor!C2',
        'danger-out-of-linear-reach @ Monitor!D2',
        'danger-beyond-limit @ Channels!G2',
        'static-and-dynamic-disagree @ Shaker!B2',
      ],
    },
    {
      tag: 'P',
      verdict: 'unreachable',
      thresholds: {
        alert: { real: 5.5, alreadyThere: false },
        danger: {
          effective: 5,
          verdict: 'unreachable',
          real: 5.5,
          alreadyThere: true,
          beyondLimit: null,
          notJudged: ['uncertainty', 'limit', 'full scale'],
        },
      },
      findings: ['danger-out-of-linear-reach @ Monitor!D5'],
    },
    {
      tag: 'Y',
      verdict: 'within',
      thresholds: {
        alert: { real: 5.5, alreadyThere: true, notJudged: ['reach', 'uncertainty', 'full scale'] },
        danger: {
          real: 5.5,
          alreadyThere: true,
          beyondLimit: 'no',
          probabilityBeyondLimit: null,
          notJudged: ['reach', 'uncertainty', 'full scale'],
        },
      },
      findings: ['channel-in-bypass @ Monitor!E6'],
    },
    {
      tag: 'I',
      verdict: 'late',
      thresholds: {
        alert: { effective: 5, verdict: 'late', governedBy: 'calibration record' },
        danger: {
          effective: 6.25,
          low: 6.25 / 1.05,
          high: 6.25 / 0.95,
          verdict: 'late',
          governedBy: 'listed sensitivity',
          panel: 2.8,
          interimSetpoint: null,
          beyondLimit: 'no',
        },
      },
      findings: [
        'alert-late @ Monitor!C3',
        'danger-late @ Monitor!D3',
        'alert-curve-differs @ Records!B9',
        'danger-curve-falls-short @ Records!B9',
        'danger-has-no-interim-setpoint @ Monitor!A3',
        'record-disagrees-with-list @ Records!B9',
      ],
    },
    {
      tag: 'B',
      verdict: 'late',
      thresholds: {
        alert: { effective: 4, verdict: 'late', governedBy: 'calibration record' },
        danger: {
          effective: null,
          shift: null,
          shiftFraction: null,
          verdict: 'undetermined',
          governedBy: 'calibration record',
          panel: 3.3,
          zone: null,
          intendedZone: null,
        },
      },
      findings: [
        'alert-late @ Monitor!C4',
        'danger-undetermined @ Monitor!D4',
        'alert-curve-differs @ Records!B16',
        'alert-in-worse-zone @ Monitor!C4',
        'danger-curve-falls-short @ Records!B16',
        'record-disagrees-with-list @ Records!B16',
      ],
    },
    {
      tag: 'J',
      verdict: 'undetermined',
      thresholds: {
        alert: { verdict: 'undetermined', beyondLimit: null },
        danger: {
          effective: 1000 / 210,
          verdict: 'undetermined',
          governedBy: 'listed sensitivity',
          beyondLimit: 'may',
        },
      },
      findings: [
        'alert-undetermined @ Monitor!C9',
        'danger-undetermined @ Monitor!D9',
        'danger-may-be-beyond-limit @ Channels!G9',
      ],
    },
    {
      tag: 'M',
      verdict: 'within',
      thresholds: {
        alert: { real: 5, alreadyThere: false },
        danger: { real: 5, alreadyThere: false, beyondLimit: 'no' },
        'alert ×3': { effective: 9, real: 5, alreadyThere: false },
        'danger ×3': { effective: 15, real: 5, alreadyThere: false, beyondLimit: null },
      },
    },
    {
      tag: 'U',
      verdict: 'within',
      thresholds: {
        alert: { beyondLimit: null },
        danger: {
          effective: 5,
          high: 5 / 0.95,
          verdict: 'within',
          beyondLimit: 'may',
          notJudged: ['reach', 'full scale'],
        },
      },
      findings: ['danger-may-be-beyond-limit @ Channels!G8'],
    },
  ],
};
