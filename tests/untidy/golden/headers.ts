import { at, channel, fields, type Guard, readOrAsked, sheet, truth, workbook } from './guard.ts';

const settings = sheet('Monitor', [
  ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
  ['GT-1X', 200, 3, 5],
  ['GT-1Y', 200, 3, 5],
  ['GT-2X', 200, 3, 5],
]);
const settingsFields = [
  'Monitor!A tag',
  'Monitor!B configured sensitivity',
  'Monitor!C alert',
  'Monitor!D danger',
];

export const headerGuards: readonly Guard[] = [
  {
    name: 'a merged header over two years',
    because:
      'The header covers B and C; 2025 is the later. By B all would be right, by C GT-1X is late and GT-2X early.',
    workbook: workbook(
      sheet(
        'Probes',
        [
          ['Tag', 'Measured sensitivity (mV/mil)'],
          [null, 2023, 2025],
          ['GT-1X', 198, 161],
          ['GT-1Y', 201, 203],
          ['GT-2X', 202, 219],
        ],
        {
          merged: [
            [1, 1, 2, 1],
            [1, 2, 1, 3],
          ],
        },
      ),
      settings,
    ),
    truth: truth(
      [
        channel('GT-1X', [200, 161, 3, 5], at(['Probes', 3], ['Monitor', 2])),
        channel('GT-1Y', [200, 203, 3, 5], at(['Probes', 4], ['Monitor', 3])),
        channel('GT-2X', [200, 219, 3, 5], at(['Probes', 5], ['Monitor', 4])),
      ],
      fields('Probes!A tag', 'Probes!C measured sensitivity', ...settingsFields),
    ),
    holds: readOrAsked,
  },
  {
    name: 'a merged header over as left and as found',
    because:
      'As left stands first below the merged header, as found second: GT-1X was found late and left right, GT-2X was left late.',
    workbook: workbook(
      sheet(
        'Probes',
        [
          ['Tag', 'Measured sensitivity (mV/mil)'],
          [null, 'As left', 'As found'],
          ['GT-1X', 199, 161],
          ['GT-1Y', 203, 203],
          ['GT-2X', 171, 170],
        ],
        {
          merged: [
            [1, 1, 2, 1],
            [1, 2, 1, 3],
          ],
        },
      ),
      settings,
    ),
    truth: truth(
      [
        channel('GT-1X', [200, 161, 3, 5], at(['Probes', 3], ['Monitor', 2]), {
          asLeft: 199,
          asLeftVerdict: 'within',
        }),
        channel('GT-1Y', [200, 203, 3, 5], at(['Probes', 4], ['Monitor', 3]), {
          asLeft: 203,
          asLeftVerdict: 'within',
        }),
        channel('GT-2X', [200, 170, 3, 5], at(['Probes', 5], ['Monitor', 4]), {
          asLeft: 171,
          asLeftVerdict: 'late',
        }),
      ],
      fields(
        'Probes!A tag',
        'Probes!C measured sensitivity',
        'Probes!B as-left sensitivity',
        ...settingsFields,
      ),
    ),
    holds: readOrAsked,
  },
  {
    name: 'running channel numbers in both tables beside unique instrument names',
    because:
      "'Channel' counts 1 to 3 on each sheet in another order; the instruments are unique and on both. By number GT-1X would have GT-2X's settings.",
    workbook: workbook(
      sheet('Probes', [
        ['Channel', 'Instrument', 'Measured sensitivity (mV/mil)'],
        [1, 'GT-1X', 161],
        [2, 'GT-1Y', 99],
        [3, 'GT-2X', 202],
      ]),
      sheet('Monitor', [
        ['Channel', 'Instrument', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
        [1, 'GT-2X', 200, 3.4, 5.6],
        [2, 'GT-1X', 200, 3, 5],
        [3, 'GT-1Y', 100, 2.6, 4.4],
      ]),
    ),
    truth: truth(
      [
        channel('GT-1X', [200, 161, 3, 5], at(['Probes', 2], ['Monitor', 3])),
        channel('GT-1Y', [100, 99, 2.6, 4.4], at(['Probes', 3], ['Monitor', 4])),
        channel('GT-2X', [200, 202, 3.4, 5.6], at(['Probes', 4], ['Monitor', 2])),
      ],
      fields(
        'Probes!B tag',
        'Probes!C measured sensitivity',
        'Monitor!B tag',
        'Monitor!C configured sensitivity',
        'Monitor!D alert',
        'Monitor!E danger',
      ),
    ),
    holds: readOrAsked,
  },
  {
    name: 'a standard header on a sheet called as left',
    because:
      "Both sheets say 'Measured sensitivity'; the name of the sheet says which time. By 'As left' GT-1X would never have been late.",
    workbook: workbook(
      sheet('As left', [
        ['Tag', 'Measured sensitivity (mV/mil)'],
        ['GT-1X', 200],
        ['GT-1Y', 202],
        ['GT-2X', 175],
      ]),
      sheet('As found', [
        ['Tag', 'Measured sensitivity (mV/mil)'],
        ['GT-1X', 161],
        ['GT-1Y', 202],
        ['GT-2X', 168],
      ]),
      settings,
    ),
    truth: truth(
      [
        channel('GT-1X', [200, 161, 3, 5], at(['As found', 2], ['As left', 2], ['Monitor', 2]), {
          asLeft: 200,
          asLeftVerdict: 'within',
        }),
        channel('GT-1Y', [200, 202, 3, 5], at(['As found', 3], ['As left', 3], ['Monitor', 3]), {
          asLeft: 202,
          asLeftVerdict: 'within',
        }),
        channel('GT-2X', [200, 168, 3, 5], at(['As found', 4], ['As left', 4], ['Monitor', 4]), {
          asLeft: 175,
          asLeftVerdict: 'late',
        }),
      ],
      fields(
        'As found!A tag',
        'As found!B measured sensitivity',
        'As left!A tag',
        'As left!B as-left sensitivity',
        ...settingsFields,
      ),
    ),
    holds: readOrAsked,
  },
  {
    name: 'nothing but a sheet called as left',
    because:
      "The only readings are those of 'As left': what was found nobody knows, so no channel may be judged as found by them.",
    workbook: workbook(
      sheet('As left', [
        ['Tag', 'Measured sensitivity (mV/mil)'],
        ['GT-1X', 200],
        ['GT-1Y', 202],
        ['GT-2X', 175],
      ]),
      settings,
    ),
    truth: truth(
      [
        channel('GT-1X', [200, null, 3, 5], at(['As left', 2], ['Monitor', 2]), { asLeft: 200 }),
        channel('GT-1Y', [200, null, 3, 5], at(['As left', 3], ['Monitor', 3]), { asLeft: 202 }),
        channel('GT-2X', [200, null, 3, 5], at(['As left', 4], ['Monitor', 4]), { asLeft: 175 }),
      ],
      fields('As left!A tag', 'As left!B as-left sensitivity', ...settingsFields),
    ),
    holds: ['read right', 'asked', 'partly read', 'refused'],
  },
];
