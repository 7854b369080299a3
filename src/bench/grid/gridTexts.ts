import english from '@univerjs/preset-sheets-core/locales/en-US';
import { mergeLocales } from '@univerjs/core';

/** Texts that the grid's own English lacks, by the keys that would stand on the screen instead. */
const missing = {
  'sheets-formula': {
    progress: {
      analyzing: 'Looking through the formulas',
      calculating: 'Calculating',
      'array-analysis': 'Looking through the formulas that fill several cells',
      'array-calculation': 'Calculating formulas that fill several cells',
      done: 'Calculated',
    },
  },
} as const;

/** All texts of the grid. */
export const gridTexts = mergeLocales(english, missing);
