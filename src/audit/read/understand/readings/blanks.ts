import { blankMarks, spareWords, totalWords } from '../vocabulary/valueWords.ts';
import { oneOf, startsWithOneOf } from '../vocabulary/wordList.ts';

const isBlankWord = oneOf(blankMarks);

/** Whether a text says that there is nothing: a dash, `n/a`, `TBC`. */
export function isSaidBlank(text: string): boolean {
  const bare = text.trim();
  if (bare.length > 40) return false;
  return /^[-–—_.?*/\\]+$/u.test(bare) || isBlankWord(bare);
}

/** Whether the first words of a text are those of a row that sums a list up: `Total`, `Mean`. */
export const isTotal = startsWithOneOf(totalWords);

/** Whether a text is a mark of a row kept for later: `Spare`. */
export const isSpare = startsWithOneOf(spareWords);
