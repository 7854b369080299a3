import { groupLate } from '../../method/late/groupLate.ts';
import { number } from '../declare/argument.ts';
import { declare } from '../declare/declare.ts';
import { FunctionError } from '../functionError.ts';
import * as voter from '../voters/arguments.ts';
import { votersOf } from '../voters/votersOf.ts';
import { multiplier } from './shared.ts';

export const VOTELATER = declare({
  id: 'VOTELATER',
  description:
    'Probability that an M-out-of-N group acts later than a limit, as far as its sensitivities are uncertain and share errors.',
  arguments: [
    number('votes', 'count', 'How many members must act: 2 in 2oo3.'),
    voter.setpoints,
    voter.configured,
    voter.measured,
    voter.shared,
    voter.own,
    number('limit', 'positive', 'Greatest acceptable real displacement, in the unit of the setpoints.'),
    voter.batches,
    multiplier,
  ],
  result: 'number',
  resultDescription:
    'Probability from 0 to 1, of the measurement alone: wiring, logic and relays are not in it. 1 where the group cannot trip.',
  example: {
    formula: '=TRIPDRIFT.VOTELATER(1,{5,5},200,160,0.01,0.01,6.25,{"lot 1","lot 2"})',
    result: '0.25',
  },
  run: (votes, setpoints, configured, measured, shared, own, limit, batches, times) => {
    const members = votersOf({ setpoints, configured, measured, shared, own, batches }, votes, times);
    return members instanceof FunctionError ? members : groupLate({ m: votes, limit, members }).late;
  },
});
