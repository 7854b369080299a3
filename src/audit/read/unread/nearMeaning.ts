import { distance } from 'fastest-levenshtein';
import { headerKey } from '../tables/header.ts';
import { columnsOf, type ColumnSpec } from '../tables/vocabulary.ts';

/** A quantity of the audit that a header belongs to or nearly spells. */
export interface NearMeaning {
  readonly id: string;
  /** Its standard header. */
  readonly name: string;
  readonly exact: boolean;
}

interface Phrase {
  readonly id: string;
  readonly name: string;
  readonly key: string;
  readonly words: readonly string[];
}

/** Headers whose few letters are near too many others. */
const shortestKey = 5;
/** Letters with which an abbreviated word begins. */
const shortestStem = 3;
/** Longer headers are sentences. */
const longestHeader = 60;

const phrases: readonly Phrase[] = (['channels', 'settings'] as const).flatMap((kind) =>
  Object.entries<ColumnSpec>(columnsOf(kind)).flatMap(([id, { name, also = [] }]) =>
    [name, ...also].map((text) => ({ id, name, key: headerKey(text), words: wordsOf(text) })),
  ),
);
const exactly = new Map(phrases.toReversed().map((phrase) => [phrase.key, phrase]));
const known = new Map<string, NearMeaning | null>();

/**
 * The quantity that a header without its unit belongs to (`exact`), or that it nearly spells: `Full scael`, `Uncertanty`,
 * `Start-up mult.`; `null` where it is near none.
 */
export function nearMeaning(header: string): NearMeaning | null {
  const text = header.trim();
  const before = known.get(text);
  if (before !== undefined) return before;
  const found = look(text);
  if (known.size < 10_000) known.set(text, found);
  return found;
}

function look(text: string): NearMeaning | null {
  if (text.length > longestHeader) return null;
  const key = headerKey(text);
  const same = exactly.get(key);
  if (same) return { id: same.id, name: same.name, exact: true };
  if (key.length < shortestKey) return null;
  const words = wordsOf(text);
  const near = phrases.find(
    (phrase) =>
      phrase.key.length >= shortestKey &&
      ((isMisspelt(key, phrase.key) && !lacksWord(words, phrase.words)) ||
        isAbbreviated(words, phrase.words)),
  );
  return near ? { id: near.id, name: near.name, exact: false } : null;
}

function wordsOf(text: string): string[] {
  return text
    .normalize('NFKD')
    .replace(/\p{M}+/gu, '')
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== '');
}

/** Slips of the keyboard that a word of this length may have and still be meant: letters exchanged count as one. */
function isMisspelt(word: string, meant: string): boolean {
  if (Math.abs(word.length - meant.length) > 2 || word[0] !== meant[0]) return false;
  const slips = distance(word, meant);
  if (slips === 0) return false;
  return slips === 1 || hasTwoExchanged(word, meant) || (slips === 2 && meant.length >= 9);
}

/** Whether two neighbouring letters have changed places: `scael` for `scale`. */
function hasTwoExchanged(word: string, meant: string): boolean {
  if (word.length !== meant.length) return false;
  let at = 0;
  while (word[at] === meant[at]) at++;
  const exchanged = `${meant.slice(0, at)}${meant[at + 1] ?? ''}${meant[at] ?? ''}${meant.slice(at + 2)}`;
  return word === exchanged;
}

/** Whether it is the phrase without a word of it, which is another header, not a slip: `Measured` is not `Measured on`. */
function lacksWord(words: readonly string[], meant: readonly string[]): boolean {
  return words.length < meant.length && words.every((word) => meant.includes(word));
}

/** Whether each word begins, or nearly spells, the word of the phrase in its place, and at least one is cut short. */
function isAbbreviated(words: readonly string[], meant: readonly string[]): boolean {
  if (words.length !== meant.length || words.length < 2) return false;
  return words.every((word, at) => {
    const whole = meant[at] ?? '';
    return (
      word === whole ||
      (word.length >= shortestStem && whole.startsWith(word)) ||
      (whole.length >= shortestKey && isMisspelt(word, whole))
    );
  });
}
