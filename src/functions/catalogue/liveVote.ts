import { liveVote, liveVoteText, outPolicies } from '../../method/voting/liveVote.ts';
import { number } from '../declare/argument.ts';
import { declare } from '../declare/declare.ts';
import { refused } from '../functionError.ts';

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
      choices: outPolicies,
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
