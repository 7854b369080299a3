import { chainWords } from './chainWords.ts';
import { identityWords } from './identityWords.ts';
import { pairWords } from './pairWords.ts';
import { qualifierWords } from './qualifierWords.ts';
import { quantityWords } from './quantityWords.ts';
import { wordsOf, type Concept, type ConceptWords, type Strength } from './wordList.ts';

/** What the words of a text stand for, each with the strength of its best word. */
export type Concepts = ReadonlyMap<Concept, Strength>;

/** The words of a text with their concepts. `known`: how many of its words are known; `words`: how many it has. */
export interface TextRead {
  readonly concepts: Concepts;
  readonly words: number;
  readonly known: number;
}

interface Meaning {
  readonly concept: Concept;
  readonly strength: Strength;
}

/** Most words of one phrase. */
const longestPhrase = 6;
/** Letters that a `*` stands for at most. */
const longestEnding = 5;
/** Shortest part of a compound that may be looked up by itself. */
const shortestPart = 5;
const kept = 20_000;

const all: readonly ConceptWords[] = [
  ...quantityWords,
  ...chainWords,
  ...identityWords,
  ...qualifierWords,
  ...pairWords,
];
const phrases = new Map<string, Meaning[]>();
const compounds = new Map<string, Meaning[]>();
for (const { concept, strong = {}, weak = {} } of all) {
  for (const [words, strength] of [
    [strong, 'strong'],
    [weak, 'weak'],
  ] as const) {
    for (const [language, list] of Object.entries(words)) {
      for (const word of wordsOf(list)) {
        const key = tokensOf(word).join(' ') + (word.endsWith('*') ? '*' : '');
        add(phrases, key, { concept, strength });
        if (language === 'de' && strength === 'strong' && !key.includes(' '))
          add(compounds, key.replace('*', ''), { concept, strength });
      }
    }
  }
}

function add(to: Map<string, Meaning[]>, key: string, meaning: Meaning): void {
  const there = to.get(key);
  if (!there) to.set(key, [meaning]);
  else if (!there.some(({ concept }) => concept === meaning.concept)) there.push(meaning);
}

/** The words of a text without case, accents and punctuation. */
export function tokensOf(text: string): string[] {
  return text
    .replace(/(\p{Ll}{3})(\p{Lu})/gu, '$1 $2')
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/ß/gu, 'ss')
    .replace(/#/gu, ' no ')
    .split(/[^\p{L}\p{N}]+/u)
    .filter((token) => token !== '');
}

/** A text without the signs at its end, each a single one that `sign` knows. */
export function withoutTrailing(text: string, sign: RegExp): string {
  let end = text.length;
  while (end > 0 && sign.test(text.charAt(end - 1))) end--;
  return text.slice(0, end);
}

const read = new Map<string, TextRead>();

/** The concepts in a text, longest phrases first. */
export function readWords(text: string): TextRead {
  const before = read.get(text);
  if (before) return before;
  const found = match(tokensOf(text));
  if (read.size < kept) read.set(text, found);
  return found;
}

/** The concepts in a text. */
export function conceptsIn(text: string): Concepts {
  return readWords(text).concepts;
}

function match(tokens: readonly string[]): TextRead {
  const concepts = new Map<Concept, Strength>();
  let known = 0;
  for (let at = 0; at < tokens.length;) {
    const [length, meanings] = longestAt(tokens, at);
    for (const { concept, strength } of meanings) {
      if (concepts.get(concept) !== 'strong') concepts.set(concept, strength);
    }
    if (meanings.length > 0) known += length;
    at += length;
  }
  return { concepts, words: tokens.length, known };
}

function longestAt(
  tokens: readonly string[],
  at: number,
): readonly [length: number, meanings: readonly Meaning[]] {
  for (let length = Math.min(longestPhrase, tokens.length - at); length > 0; length--) {
    const phrase = tokens.slice(at, at + length);
    const found = phrases.get(phrase.join(' ')) ?? stemmed(phrase) ?? singular(phrase);
    if (found) return [length, found];
  }
  return [1, compound(tokens[at] ?? '')];
}

/** A phrase in the plural by its singular: `Ajustes`, `Empfindlichkeiten`. */
function singular(tokens: readonly string[]): readonly Meaning[] | undefined {
  const phrase = tokens.join(' ');
  if ((tokens.at(-1)?.length ?? 0) < shortestPart) return undefined;
  for (const ending of ['s', 'es', 'en', 'n']) {
    const found = phrase.endsWith(ending) ? phrases.get(phrase.slice(0, -ending.length)) : undefined;
    if (found) return found;
  }
  return undefined;
}

function stemmed(tokens: readonly string[]): readonly Meaning[] | undefined {
  const phrase = tokens.join(' ');
  const last = tokens.at(-1)?.length ?? 0;
  for (let cut = 0; cut <= Math.min(longestEnding, last - 2); cut++) {
    const found = phrases.get(`${phrase.slice(0, phrase.length - cut)}*`);
    if (found) return found;
  }
  return undefined;
}

/** A German compound by its parts: `Istkennwert` is `Ist` and `Kennwert`; one part alone counts where it is long. */
function compound(token: string): readonly Meaning[] {
  if (token.length < 2 * shortestPart - 2) return [];
  for (let cut = 3; cut <= token.length - 3; cut++) {
    const [left, right] = [token.slice(0, cut), token.slice(cut)];
    const head = compounds.get(right) ?? stemmed([right]);
    if (!head) continue;
    const front = phrases.get(left) ?? phrases.get(left.replace(/s$/u, '')) ?? [];
    if (front.length > 0 || right.length >= shortestPart + 2) return [...front, ...head];
  }
  for (let cut = token.length - 3; cut >= shortestPart; cut--) {
    const front = compounds.get(token.slice(0, cut));
    if (front) return front;
  }
  return [];
}
