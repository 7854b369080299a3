import { linearReach } from '../../method/reach/linearReach.ts';
import { number } from '../declare/argument.ts';
import { declare } from '../declare/declare.ts';
import { refused } from '../functionError.ts';

export const REACH = declare({
  id: 'REACH',
  description: 'Largest peak-to-peak swing about the gap that stays inside the linear range.',
  arguments: [
    number('gap', 'notZero', 'Operating gap.'),
    number('from', 'notZero', 'Smaller end of the linear range, in the unit of the gap.'),
    number('to', 'notZero', 'Greater end of the linear range, in the unit of the gap.'),
  ],
  result: 'number',
  resultDescription: 'Swing in the unit of the gap; 0 where the gap lies outside the range.',
  example: { formula: '=TRIPDRIFT.REACH(50,10,80)', result: '60' },
  native: 'IF(from<to,IF(gap<=from,0,IF(gap>=to,0,2*IF(gap-from<to-gap,gap-from,to-gap))),#VALUE!)',
  run: (gap, from, to) =>
    from < to ? linearReach(gap, from, to) : refused('From is not below To: enter the smaller end first.'),
});
