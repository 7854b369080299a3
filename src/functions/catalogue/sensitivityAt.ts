import { sensitivityAt } from '../../method/frequency/sensitivityAt.ts';
import { number, series } from '../declare/argument.ts';
import { declare } from '../declare/declare.ts';
import { FunctionError, notAvailable } from '../functionError.ts';
import { pairedBy } from '../pairs/paired.ts';
import { short } from '../record/short.ts';

export const SENSITIVITYAT = declare({
  id: 'SENSITIVITYAT',
  description:
    'Sensitivity at a frequency or speed, from a record of it: straight between its points, never beyond them.',
  arguments: [
    series(
      'frequencies',
      'positive',
      'Frequencies or speeds of the record, a row or a column, in any order.',
    ),
    series('sensitivities', 'positive', 'Sensitivities measured there, one beside each.'),
    number('frequency', 'positive', 'Frequency or speed in the unit of the record.'),
  ],
  result: 'number',
  resultDescription: 'Sensitivity in the unit of the record; #N/A outside it.',
  example: { formula: '=TRIPDRIFT.SENSITIVITYAT({10,20,40},{158,181,194},25)', result: '184.25' },
  run: (frequencies, sensitivities, frequency) => {
    const places = pairedBy(
      [
        { name: 'Frequencies', cells: frequencies },
        { name: 'Sensitivities', cells: sensitivities },
      ],
      2,
    );
    if (places instanceof FunctionError) return places;
    const known = places.map(({ values }) => values[0] ?? NaN);
    const found = sensitivityAt(
      { frequencies: known, sensitivities: places.map(({ values }) => values[1] ?? NaN) },
      frequency,
    );
    if (!Number.isNaN(found)) return found;
    return notAvailable(
      `Frequency ${short(frequency)} lies outside the record, ${short(known[0] ?? null)} to ${short(known.at(-1) ?? null)}.`,
    );
  },
});
