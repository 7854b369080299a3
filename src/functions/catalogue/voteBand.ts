import { groupBand } from '../../method/late/groupBand.ts';
import { number, optionalNumber } from '../declare/argument.ts';
import { declare } from '../declare/declare.ts';
import { FunctionError, notAvailable } from '../functionError.ts';
import * as voter from '../voters/arguments.ts';
import { votersOf } from '../voters/votersOf.ts';
import { multiplier } from './shared.ts';

export const VOTEBAND = declare({
  id: 'VOTEBAND',
  description:
    'Lowest and highest real displacement at which an M-out-of-N group may act, its sensitivities uncertain and sharing errors.',
  arguments: [
    number('votes', 'count', 'How many members must act: 2 in 2oo3.'),
    voter.setpoints,
    voter.configured,
    voter.measured,
    voter.shared,
    voter.own,
    voter.batches,
    multiplier,
    optionalNumber(
      'coverage',
      'positive',
      2,
      'Coverage factor k of the interval: it has acted with probability Φ(−k) at the low end and Φ(k) at the high; 2 if left out.',
    ),
  ],
  result: 'pair',
  resultDescription:
    'Low and high side by side, in the unit of the setpoints; #N/A where the group cannot trip.',
  example: { formula: '=TRIPDRIFT.VOTEBAND(1,5,200,160,0,0.125)', result: '5\t8.333333333333334' },
  run: (votes, setpoints, configured, measured, shared, own, batches, times, coverage) => {
    const members = votersOf({ setpoints, configured, measured, shared, own, batches }, votes, times);
    if (members instanceof FunctionError) return members;
    const able = members.filter(({ threshold }) => threshold !== Infinity).length;
    if (able < votes)
      return notAvailable(
        `Measured: ${able} of ${members.length} members can act, ${votes} needed: the group cannot trip.`,
      );
    const band = groupBand({ m: votes, members }, coverage);
    return Number.isNaN(band.high)
      ? new FunctionError(
          '#NUM!',
          `Coverage ${coverage} has no upper end: Shared and Own are too great for it.`,
        )
      : band;
  },
});
