import type { Moment, ReplayedChannel, ReplayedThreshold } from '../model/replay.ts';
import { clockOf, dayOf, duration } from '../model/wording.ts';

/** What a record says of a channel, a sentence a threshold, and what it can't say. */
export function replayedText({ tag, thresholds, shortNotSeen, interval }: ReplayedChannel): string[] {
  const reached = thresholds.filter(({ outcome }) => outcome !== 'not reached');
  const never = thresholds.filter(({ outcome }) => outcome === 'not reached').map(({ name }) => name);
  return [
    ...reached.map((threshold) => `${tag} ${threshold.name}: ${outcomeText(threshold)}.`),
    ...(never.length > 0 ? [`${tag} ${never.join(', ')}: not reached, and should not have been.`] : []),
    ...(shortNotSeen && interval !== null && reached.length > 0
      ? [`${tag}: one reading every ${duration(interval)}; peaks shorter than that are not seen.`]
      : []),
  ];
}

/** What a record says of one threshold. */
export function outcomeText({ outcome, acted, should, late, fromStart }: ReplayedThreshold): string {
  const fine = late !== null && Math.abs(late) < 60;
  const did = spanText(acted, actedWords, fine);
  const due = `${spanText(should, dueWords, fine, acted.proven)}${fromStart ? ', where the record begins, or before' : ''}`;
  switch (outcome) {
    case 'late':
      return `${fromStart ? 'at least ' : ''}${duration(late ?? NaN)} late, ${did}, ${due}`;
    case 'early':
      return `${duration(late ?? NaN)} early, ${did}, ${due}`;
    case 'as set':
      return `on time, ${did}`;
    case 'did not act':
      return `did not act, ${due}`;
    case 'false':
      return `${did}, and should not have`;
    case 'not known':
      return `not known: ${did}, ${due}`;
    case 'not reached':
      return 'not reached';
  }
}

/** Words for what is proven, what is only possible, and what the record does not hold. */
interface SpanWords {
  readonly proven: string;
  readonly possible: string;
  readonly never: string;
}

const actedWords: SpanWords = {
  proven: 'acted',
  possible: 'may have acted',
  never: 'did not act in the record',
};
const dueWords: SpanWords = {
  proven: 'should have acted',
  possible: 'perhaps should have acted',
  never: 'should not have acted in the record',
};

/**
 * When it acted as far as is proven; where unknown readings matter, the earliest possible too. The day of `said` is not
 * repeated.
 */
function spanText(
  { proven, earliest }: ReplayedThreshold['acted'],
  words: SpanWords,
  fine: boolean,
  said: Moment | null = null,
): string {
  const at = ({ time }: Moment): string =>
    `${said && dayOf(said.time) === dayOf(time) ? '' : `${dayOf(time)} `}${clockOf(time, fine)}`;
  if (!proven) return earliest ? `${words.possible} from ${at(earliest)} (not proven)` : words.never;
  const isSure = !earliest || Math.abs(proven.seconds - earliest.seconds) < 5e-4;
  return `${words.proven} at ${at(proven)}${isSure ? '' : ` (possibly from ${clockOf(earliest.time, fine)})`}`;
}
