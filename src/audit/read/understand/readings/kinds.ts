import type { Kind } from '../../../model/channel.ts';
import { kindWords, meaningOf } from '../../rows/words.ts';
import { tokensOf } from '../vocabulary/lexicon.ts';
import { kindWordsOf, otherKindWords } from '../vocabulary/valueWords.ts';
import { wordsOf } from '../vocabulary/wordList.ts';

const phrases = new Map<string, Kind | 'other'>();
for (const [kind, words] of [...Object.entries(kindWordsOf), ['other', otherKindWords] as const]) {
  for (const word of Object.values(words).flatMap(wordsOf))
    phrases.set(tokensOf(word).join(' ') + (word.endsWith('*') ? '*' : ''), kind as Kind | 'other');
}
const longest = 4;

/** The kind of channel that a text under Type, Sensor or Position names; `undefined` where it names none, or two. */
export function kindIn(text: string): Kind | 'other' | undefined {
  const standard = meaningOf(kindWords, text);
  if (standard) return standard;
  if (text.length > 80) return undefined;
  const tokens = tokensOf(text);
  const found = new Set<Kind | 'other'>();
  for (let at = 0; at < tokens.length;) {
    let step = 1;
    for (let length = Math.min(longest, tokens.length - at); length > 0; length--) {
      const phrase = tokens.slice(at, at + length).join(' ');
      const kind = phrases.get(phrase) ?? stem(phrase);
      if (!kind) continue;
      found.add(kind);
      step = length;
      break;
    }
    at += step;
  }
  if (found.size === 2 && found.has('radial')) found.delete('radial');
  return found.size === 1 ? [...found][0] : undefined;
}

function stem(phrase: string): Kind | 'other' | undefined {
  for (let cut = 0; cut <= Math.min(5, phrase.length - 4); cut++) {
    const found = phrases.get(`${phrase.slice(0, phrase.length - cut)}*`);
    if (found) return found;
  }
  return undefined;
}
