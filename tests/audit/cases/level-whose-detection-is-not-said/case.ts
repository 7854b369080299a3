import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'Detections of velocity are not assumed: setpoints that state none are not compared with a limit in pk, and that is said. A limit of 0.45 in/s would be passed by 0.5 in/s in pk, not in rms (0.318). Where the setpoints are stated in rms the limit is converted: 0.45/√2 = 0.318 rms, which 0.5 rms passes.',
  book: book([
    'All',
    [
      [
        'Tag',
        'Kind',
        'Measured sensitivity',
        'Unit',
        'Configured sensitivity',
        'Alert',
        'Danger',
        'Unit',
        'Limit',
        'Limit unit',
      ],
      ['not said', 'velocity', 100, 'mV/(in/s)', 100, 0.3, 0.5, 'in/s', 0.45, 'in/s pk'],
      ['said', 'velocity', 100, 'mV/(in/s)', 100, 0.3, 0.5, 'in/s rms', 0.45, 'in/s pk'],
    ],
  ]),
  channels: [
    {
      tag: 'not said',
      verdict: 'within',
      inputs: { limit: null },
      thresholds: {
        alert: {},
        danger: { beyondLimit: null, notJudged: ['limit', 'uncertainty', 'full scale'] },
      },
      findings: ['detection-not-said @ All!I2'],
    },
    {
      tag: 'said',
      verdict: 'within',
      inputs: { limit: 0.45 / Math.SQRT2 },
      thresholds: { alert: {}, danger: { beyondLimit: 'yes' } },
      findings: ['danger-beyond-limit @ All!I3'],
    },
  ],
  attention: ['critical beyond-limit said danger', 'warning finding not said detection-not-said'],
};
