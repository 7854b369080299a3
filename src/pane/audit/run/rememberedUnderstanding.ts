import { speedSheets } from '../../../audit/read/runup/readRunUps.ts';
import { trendSheets, withoutSheets } from '../../../audit/read/trend/findTrends.ts';
import {
  understand,
  type Understand,
  type Understanding,
} from '../../../audit/read/understand/understand.ts';
import type { Sheet } from '../../../cells/sheet.ts';

/** What was understood last, and of what. */
interface Last {
  readonly sheets: readonly Sheet[];
  readonly answers: string;
  readonly understanding: Understanding;
}

/**
 * Understands a workbook, and knows the last one again: of the same sheets and answers the work is not done twice, once to
 * audit and once to ask.
 */
export function rememberedUnderstanding(by: Understand = understand): Understand {
  let last: Last | null = null;
  return function* (all, said = {}) {
    // The audit hands over the workbook without its sheets of readings, who asks all of it.
    const { sheets } = withoutSheets(all, [...trendSheets(all, said), ...speedSheets(all, said)]);
    const answers = JSON.stringify(said);
    const isSame =
      last?.answers === answers &&
      last.sheets.length === sheets.length &&
      last.sheets.every((sheet, index) => sheet === sheets[index]);
    if (last && isSame) return last.understanding;
    const understanding = yield* by(all, said);
    last = { sheets, answers, understanding };
    return understanding;
  };
}
