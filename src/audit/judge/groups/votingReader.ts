import { parseVoting, type Voting } from '../../../method/voting/voting.ts';

/** What a voting text means; `undefined` where it is none. */
export type ReadVoting = (text: string) => Voting | undefined;

/** Reads voting texts, each distinct one once. */
export function votingReader(): ReadVoting {
  const known = new Map<string, Voting | undefined>();
  return (text) => {
    if (!known.has(text)) known.set(text, parseVoting(text));
    return known.get(text);
  };
}
