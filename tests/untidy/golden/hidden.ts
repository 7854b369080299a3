import { at, channel, fields, type Guard, readOrAsked, sheet, truth, workbook } from './guard.ts';

const settings = sheet('Monitor', [
  ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
  ['FV-11', 200, 2.5, 4.5],
  ['FV-12', 200, 2.5, 4.5],
  ['FV-13', 200, 2.5, 4.5],
]);
const settingsFields = [
  'Monitor!A tag',
  'Monitor!B configured sensitivity',
  'Monitor!C alert',
  'Monitor!D danger',
];

export const hiddenGuards: readonly Guard[] = [
  {
    name: 'a hidden old column beside a visible one in plant words',
    because:
      'Column B is hidden, under the standard header; what people see is D, of 03/2025. FV-11 is late by D and right by B.',
    workbook: workbook(
      sheet(
        'Probes',
        [
          ['Tag', 'Measured sensitivity (mV/mil)', 'Gap volts (V)', 'Meas. sens. 03/2025 (mV/mil)'],
          ['FV-11', 199, -9.6, 164],
          ['FV-12', 201, -9.8, 202],
          ['FV-13', 198, -9.5, 221],
        ],
        { hiddenColumns: [2] },
      ),
      settings,
    ),
    truth: truth(
      [
        channel('FV-11', [200, 164, 2.5, 4.5], at(['Probes', 2], ['Monitor', 2])),
        channel('FV-12', [200, 202, 2.5, 4.5], at(['Probes', 3], ['Monitor', 3])),
        channel('FV-13', [200, 221, 2.5, 4.5], at(['Probes', 4], ['Monitor', 4])),
      ],
      fields('Probes!A tag', 'Probes!D measured sensitivity', ...settingsFields),
    ),
    holds: readOrAsked,
  },
  {
    name: 'a hidden sheet of old settings with standard headers',
    because:
      "Sheet 'old' is hidden and set to what was measured; the live sheet speaks of rack SF, H and HH. Both trips of FV-11 and FV-13 are off.",
    workbook: workbook(
      sheet(
        'old',
        [
          ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
          ['FV-11', 164, 3.5, 6.5],
          ['FV-12', 202, 3.5, 6.5],
          ['FV-13', 221, 3.5, 6.5],
        ],
        { hidden: true },
      ),
      sheet('Rack', [
        ['Instrument', 'Rack SF (mV/mil)', 'H (mil pp)', 'HH (mil pp)'],
        ['FV-11', 200, 2.5, 4.5],
        ['FV-12', 200, 2.5, 4.5],
        ['FV-13', 200, 2.5, 4.5],
      ]),
      sheet('Test', [
        ['Instrument', 'SF tested (mV/mil)', 'Gap volts (V)'],
        ['FV-11', 164, -9.6],
        ['FV-12', 202, -9.8],
        ['FV-13', 221, -9.5],
      ]),
    ),
    truth: truth(
      [
        channel('FV-11', [200, 164, 2.5, 4.5], at(['Test', 2], ['Rack', 2])),
        channel('FV-12', [200, 202, 2.5, 4.5], at(['Test', 3], ['Rack', 3])),
        channel('FV-13', [200, 221, 2.5, 4.5], at(['Test', 4], ['Rack', 4])),
      ],
      fields(
        'Test!A tag',
        'Test!B measured sensitivity',
        'Rack!A tag',
        'Rack!B configured sensitivity',
        'Rack!C alert',
        'Rack!D danger',
      ),
    ),
    holds: readOrAsked,
  },
  {
    name: 'a hidden row with an old value',
    because:
      'Row 2 is hidden and repeats FV-11 as it was before; row 3 is what people see. By row 2 FV-11 would be right, by row 3 it is late.',
    workbook: workbook(
      sheet(
        'Probes',
        [
          ['Tag', 'Measured sensitivity (mV/mil)'],
          ['FV-11', 199],
          ['FV-11', 164],
          ['FV-12', 202],
          ['FV-13', 221],
        ],
        { hiddenRows: [2] },
      ),
      settings,
    ),
    truth: truth(
      [
        channel('FV-11', [200, 164, 2.5, 4.5], at(['Probes', 3], ['Probes', 2], ['Monitor', 2]), {
          also: ['incomplete'],
        }),
        channel('FV-12', [200, 202, 2.5, 4.5], at(['Probes', 4], ['Monitor', 3])),
        channel('FV-13', [200, 221, 2.5, 4.5], at(['Probes', 5], ['Monitor', 4])),
      ],
      fields('Probes!A tag', 'Probes!B measured sensitivity', ...settingsFields),
    ),
    holds: readOrAsked,
  },
  {
    name: 'a meaning that stands only in a hidden column',
    because:
      'The measured sensitivity stands in the hidden column B alone: nobody sees it, so a person says whether it holds.',
    workbook: workbook(
      sheet(
        'Probes',
        [
          ['Tag', 'Measured sensitivity (mV/mil)', 'Gap volts (V)'],
          ['FV-11', 164, -9.6],
          ['FV-12', 202, -9.8],
          ['FV-13', 221, -9.5],
        ],
        { hiddenColumns: [2] },
      ),
      settings,
    ),
    truth: truth(
      [
        channel('FV-11', [200, 164, 2.5, 4.5], at(['Probes', 2], ['Monitor', 2]), { mustAsk: true }),
        channel('FV-12', [200, 202, 2.5, 4.5], at(['Probes', 3], ['Monitor', 3]), { mustAsk: true }),
        channel('FV-13', [200, 221, 2.5, 4.5], at(['Probes', 4], ['Monitor', 4]), { mustAsk: true }),
      ],
      fields('Probes!A tag', 'Probes!B measured sensitivity', ...settingsFields),
      { accept: ['ask'] },
    ),
    holds: ['asked'],
  },
];
