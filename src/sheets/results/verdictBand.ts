import { verdictWords } from '../../audit/model/verdictWords.ts';
import type { ModelValue } from '../model.ts';
import { listedGoverns, type Band } from './column.ts';

const yesOrNo = { true: 'yes', false: 'no' } as const;

/** A yes or no as it stands on the sheet; `null` is nothing. */
export function word(value: boolean | null): ModelValue {
  return value === null ? null : yesOrNo[`${value}`];
}

/** How a threshold stands now, with the formulas that lead to it. */
export const verdictBand: Band = {
  caption: 'Now',
  columns: [
    {
      id: 'verdict',
      header: 'Verdict',
      width: 14,
      style: 'verdict',
      value: ({ threshold }) => verdictWords[threshold.verdict],
      formula: 'verdict',
      applies: listedGoverns,
    },
    { id: 'state', header: 'Judged', width: 10, style: 'centred', value: ({ channel }) => channel.state },
    {
      id: 'inBypass',
      header: 'In bypass',
      width: 9,
      style: 'centred',
      value: ({ channel }) => word(channel.inBypass) ?? 'not known',
    },
  ],
};
