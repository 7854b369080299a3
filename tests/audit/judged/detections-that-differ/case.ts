import { measured } from '../../oracle/plainChannel.ts';
import { facts, pair, type CaseTwo } from '../caseTwo.ts';

const velocity = { kind: 'velocity', configured: 100, alert: 0.3, danger: 0.5 } as const;

export const judged: CaseTwo = {
  because:
    'Stated detections that differ are converted; of a sinusoid pk = √2 rms. Setpoints in rms, by hand: a limit of 0.6 in/s pk is 0.4243 rms, and danger acts at 0.5, beyond it; a full scale of 0.68 pk is 0.4808 rms, below danger; 0.5 in/s pk shown is 0.3536 rms, at 70 for 100 mV really 0.5051, past danger and shown below it, which acts at 0.7143.',
  sheets: pair(
    [
      [
        ...['Tag', 'Machine', 'Kind', 'Measured sensitivity (mV/in/s)', 'Limit (in/s pk)'],
        'Present reading (in/s pk)',
      ],
      ['limit', 'Pump', 'velocity', 100, 0.6, null],
      ['scale', 'Pump', 'velocity', 100, null, null],
      ['there', 'Pump', 'velocity', 70, null, 0.5],
    ],
    [
      [
        ...['Tag', 'Configured sensitivity (mV/in/s)', 'Alert (in/s rms)', 'Danger (in/s rms)'],
        'Full scale (in/s pk)',
      ],
      ['limit', 100, 0.3, 0.5, null],
      ['scale', 100, 0.3, 0.5, 0.68],
      ['there', 100, 0.3, 0.5, null],
    ],
  ),
  facts: facts(
    { tag: 'limit', ...velocity, limit: 0.6 / Math.SQRT2, ...measured(100) },
    { tag: 'scale', ...velocity, fullScale: 0.68 / Math.SQRT2, ...measured(100) },
    { tag: 'there', ...velocity, reading: 0.5 / Math.SQRT2, ...measured(70) },
  ),
  channels: {
    limit: { verdict: 'within' },
    scale: { verdict: 'unreachable' },
    there: { verdict: 'late', thresholds: { danger: { effective: 50 / 70, panel: 0.35 } } },
  },
  critical: ['Pump / limit', 'Pump / scale', 'Pump / there'],
  attention: [
    { severity: 'critical', tag: 'limit', threshold: 'danger', limit: 0.6 / Math.SQRT2 },
    { severity: 'critical', tag: 'there', threshold: 'danger', set: 0.5, real: 50 / 70 / Math.SQRT2 },
  ],
};
