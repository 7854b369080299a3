import type { Concept } from '../../tables/concepts.ts';
import { headerKey } from '../../tables/header.ts';

export type { Concept };

/** Languages whose words are known. */
type Language = 'en' | 'de' | 'es' | 'fr' | 'pt' | 'it';

/** Words by language, with ` | ` between them. A trailing `*` stands for any ending of up to five letters. Case, accents and punctuation do not count. */
export type Words = Readonly<Partial<Record<Language, string>>>;

/** How much a word says: a strong one can hardly mean something else on such a sheet, a weak one can. */
export type Strength = 'strong' | 'weak';

/** The words for one concept. */
export interface ConceptWords {
  readonly concept: Concept;
  readonly strong?: Words;
  readonly weak?: Words;
  /** Where the words come from: a source, or the memory of those who wrote them down. */
  readonly from: 'memory';
}

/** Whether a text is one of some words, whatever its case, accents and punctuation. */
export type IsOneOf = (text: string) => boolean;

/** Tells whether a text is one of the words. A word that ends in `*` also fits with any ending. */
export function oneOf(...lists: readonly Words[]): IsOneOf {
  const { exact, stems } = keysOf(lists);
  return (text) => {
    const key = headerKey(text);
    return exact.has(key) || stems.some((stem) => key.startsWith(stem) && key.length <= stem.length + 5);
  };
}

/** Tells whether the first words of a text are among the words: `Total channels: 4`. */
export function startsWithOneOf(...lists: readonly Words[]): IsOneOf {
  const { exact } = keysOf(lists);
  return (text) => {
    const words = text.split(/[\s:.;,=–-]+/u).filter((word) => word !== '');
    let key = '';
    for (const word of words.slice(0, 4)) {
      key += headerKey(word);
      if (exact.has(key)) return true;
    }
    return false;
  };
}

/** Tells whether one of the words, or a number behind it, stands anywhere in a text: `Rack 2`, `Tabelle1`. */
export function holdsOneOf(...lists: readonly Words[]): IsOneOf {
  const { exact } = keysOf(lists);
  return (text) => text.split(/[^\p{L}]+/u).some((word) => exact.has(headerKey(word)));
}

function keysOf(lists: readonly Words[]): {
  readonly exact: ReadonlySet<string>;
  readonly stems: readonly string[];
} {
  const words = lists.flatMap((list) => Object.values(list).flatMap(wordsOf));
  return {
    exact: new Set(words.filter((word) => !word.endsWith('*')).map(headerKey)),
    stems: words.filter((word) => word.endsWith('*')).map(headerKey),
  };
}

/** The words of one language, one by one. */
export function wordsOf(text: string): string[] {
  return text.split(' | ');
}
