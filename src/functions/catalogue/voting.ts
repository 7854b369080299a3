import { votedThreshold } from '../../method/voting/voting.ts';
import { number, optionalNumber } from '../declare/argument.ts';
import { declare } from '../declare/declare.ts';
import { notAvailable, refused, FunctionError } from '../functionError.ts';
import { liveVote, liveVoteText, memberOutPolicies } from '../../method/voting/liveVote.ts';
import { groupBand } from '../../method/late/groupBand.ts';
import * as voter from '../voters/arguments.ts';
import { votersOf } from '../voters/votersOf.ts';
import { multiplier } from './shared.ts';
import { groupLate } from '../../method/late/groupLate.ts';

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
    'Probability from 0 to 1, by the measurement alone; wiring, logic and relays are not counted. 1 where the group cannot trip.',
  example: {
    formula: '=TRIPDRIFT.VOTELATER(1,{5,5},200,160,0.01,0.01,6.25,{"lot 1","lot 2"})',
    result: '0.25',
  },
  run: (votes, setpoints, configured, measured, shared, own, limit, batches, times) => {
    const members = votersOf({ setpoints, configured, measured, shared, own, batches }, votes, times);
    return members instanceof FunctionError ? members : groupLate({ m: votes, limit, members }).late;
  },
});

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

export const LIVEVOTE = declare({
  id: 'LIVEVOTE',
  description: 'Voting that is left while members of an M-out-of-N group are in bypass or faulty.',
  arguments: [
    number('votes', 'count', 'How many members must act: 2 in 2oo3.'),
    number('members', 'count', 'How many members the group has: 3 in 2oo3.'),
    number('out', 'countOrNone', 'How many of them are out of service.'),
    {
      kind: 'choice',
      name: 'policy',
      choices: memberOutPolicies,
      description:
        'What the system does with a member that is out: "no-trip" (it casts no vote), "trip" (it casts one) or "reduce" (the others vote among themselves).',
    },
  ],
  result: 'text',
  resultDescription: 'Text such as 2oo2; "tripped" or "cannot trip" where no vote is left.',
  example: { formula: '=TRIPDRIFT.LIVEVOTE(2,3,1,"trip")', result: '1oo2' },
  run: (votes, members, out, policy) => {
    if (votes > members) return refused(`Votes is ${votes} of ${members} members: enter ${members} at most.`);
    if (out > members) return refused(`Out is ${out} of ${members} members: enter ${members} at most.`);
    const vote = liveVote({ m: votes, n: members }, out, policy);
    return vote && liveVoteText(vote);
  },
});

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
