import { corrected, measured } from '../../oracle/plainChannel.ts';
import { facts, pair, type CaseTwo } from '../caseTwo.ts';

const axial = { kind: 'axial', alert: 10, danger: 20, zeroConfigured: -10, direction: 'toward' } as const;

export const judged: CaseTwo = {
  because:
    'Without a zero that was measured nothing is known of where a position acts, unless the ratio alone makes it late: 20·200/160 = 25 mil. As left the zero was not measured again: corrected from 160 to 200 mV/mil, it is not known whether it is right now; as found, with the zero at −10 V, it was 25 % late.',
  sheets: pair(
    [
      [
        ...['Tag', 'Machine', 'Kind', 'Measured sensitivity (mV/mil)', 'Measured zero voltage (V)'],
        ...['Positive direction', 'As-left sensitivity (mV/mil)'],
      ],
      ['none', 'Pump', 'axial', 200, null, 'toward', null],
      ['ratio', 'Pump', 'axial', 160, null, 'toward', null],
      ['again', 'Pump', 'axial', 160, -10, 'toward', 200],
    ],
    [
      [
        ...['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
        'Configured zero voltage (V)',
      ],
      ['none', 200, 10, 20, -10],
      ['ratio', 200, 10, 20, -10],
      ['again', 200, 10, 20, -10],
    ],
  ),
  facts: facts(
    { tag: 'none', ...axial, ...measured(200) },
    { tag: 'ratio', ...axial, ...measured(160) },
    { tag: 'again', ...axial, ...measured(160, { zero: -10 }), ...corrected(200) },
  ),
  channels: {
    none: { verdict: 'incomplete', thresholds: { danger: { effective: null, panel: null } } },
    ratio: { verdict: 'late', thresholds: { danger: { effective: 25, verdict: 'late' } } },
    again: {
      verdict: 'incomplete',
      state: 'as left',
      asFound: 'late',
      thresholds: { danger: { effective: null, verdict: 'incomplete' } },
    },
  },
  critical: ['Pump / again', 'Pump / none', 'Pump / ratio'],
};
