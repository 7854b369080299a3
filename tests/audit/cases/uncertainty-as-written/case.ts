import type { GoldenCase } from '../../golden.ts';
import { PercentCell } from '../../../../src/cells/cell.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'Uncertainty is percent of value unless its unit says otherwise: a cell shown as 3 %, the text "3 %", the number 3 and 4.8 mV/mil of 160 are all 0.03 ' +
    '(4.8/160), the number 3 at k = 1.96 is 0.03·2/1.96 at the k = 2 of the policy; 0.03 is 0.0003, below what a field calibration reaches (common practice, no source); 100 % and 0 are outside the physical range.',
  book: book(
    [
      'Channels',
      [
        ['Tag', 'Measured sensitivity (mV/mil)', 'Uncertainty', 'Uncertainty unit', 'Coverage factor'],
        ['shown', 160, new PercentCell(3), null, null],
        ['text', 160, '3 %', null, null],
        ['number', 160, 3, '%', 1.96],
        ['absolute', 160, 4.8, 'mV/mil', null],
        ['fraction', 160, 0.03, null, null],
        ['all', 160, 100, null, null],
        ['none', 160, 0, null, null],
        ['more', 160, 170, 'mV/mil', null],
        ['volts', 160, 1, 'mV/(mm/s)', null],
      ],
    ],
    [
      'Monitor',
      [
        ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
        ...['shown', 'text', 'number', 'absolute', 'fraction', 'all', 'none', 'more', 'volts'].map((tag) => [
          tag,
          200,
          3,
          5,
        ]),
      ],
    ],
  ),
  channels: [
    ...(['shown', 'text', 'number', 'absolute'] as const).map((tag, index) => ({
      tag,
      verdict: 'late' as const,
      sensitivity: { uncertainty: tag === 'number' ? 0.06 / 1.96 : 0.03, coverage: 2 },
      findings: [
        `alert-late @ Monitor!C${index + 2}`,
        `danger-late @ Monitor!D${index + 2}`,
        ...(tag === 'text' ? ['number-written-as-text @ Channels!C3'] : []),
      ],
    })),
    {
      tag: 'fraction',
      verdict: 'late',
      sensitivity: { uncertainty: 0.0003 },
      findings: ['alert-late @ Monitor!C6', 'danger-late @ Monitor!D6', 'unit-slip-suspected @ Channels!C6'],
    },
    { tag: 'all', verdict: 'incomplete', findings: ['value-out-of-range @ Channels!C7'] },
    { tag: 'none', verdict: 'incomplete', findings: ['value-out-of-range @ Channels!C8'] },
    { tag: 'more', verdict: 'incomplete', findings: ['value-out-of-range @ Channels!C9'] },
    { tag: 'volts', verdict: 'incomplete', findings: ['value-out-of-range @ Channels!C10'] },
  ],
};
