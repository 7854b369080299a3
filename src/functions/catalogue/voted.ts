import { votedThreshold } from '../../method/voting/voted.ts';
import { number } from '../declare/argument.ts';
import { declare } from '../declare/declare.ts';
import { notAvailable } from '../functionError.ts';

export const VOTED = declare({
  id: 'VOTED',
  description:
    'Threshold at which an M-out-of-N group acts when its channels see the same motion: the M-th smallest.',
  arguments: [
    {
      kind: 'members',
      name: 'thresholds',
      description:
        'Effective thresholds of the members. Text or an error is a member that cannot act; blank cells are none.',
    },
    number('m', 'count', 'How many members must act: 2 in 2oo3.'),
  ],
  result: 'number',
  resultDescription: 'Threshold of the group, in the unit of its members; #N/A where it cannot trip.',
  example: { formula: '=TRIPDRIFT.VOTED({4,4.3,3.7},2)', result: '4' },
  run: (thresholds, m) => {
    const threshold = votedThreshold(thresholds, m);
    if (threshold !== Infinity) return threshold;
    const able = thresholds.filter((one) => one !== Infinity).length;
    return notAvailable(
      `Thresholds: ${able} of ${thresholds.length} members can act, ${m} needed: the group cannot trip.`,
    );
  },
});
