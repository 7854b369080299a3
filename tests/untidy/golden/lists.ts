import {
  at,
  channel,
  fields,
  type Guard,
  mustBeAsked,
  mustBeRead,
  readOrAsked,
  sheet,
  truth,
  workbook,
} from './guard.ts';

const probes = [
  ['Tag', 'Measured sensitivity (mV/mil)'],
  ['LP-1', 163],
  ['LP-2', 202],
  ['LP-3', 199],
] as const;
const settingsHeader = ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'] as const;
const twoTables = fields(
  'Probes!A tag',
  'Probes!B measured sensitivity',
  'Monitor!A tag',
  'Monitor!B configured sensitivity',
  'Monitor!C alert',
  'Monitor!D danger',
);

export const listGuards: readonly Guard[] = [
  {
    name: 'a second list in plant words that shares tags with the probes',
    because:
      "Sheet 'Added 2025' has the settings of LP-3 under other words; a reader that takes the standard sheet alone loses it.",
    workbook: workbook(
      sheet('Probes', probes),
      sheet('Monitor', [settingsHeader, ['LP-1', 200, 2.8, 4.8], ['LP-2', 200, 2.8, 4.8]]),
      sheet('Added 2025', [
        ['Point', 'Set SF (mV/mil)', 'Alarm (mil)', 'Trip (mil)'],
        ['LP-3', 250, 2.8, 4.8],
      ]),
    ),
    truth: truth(
      [
        channel('LP-1', [200, 163, 2.8, 4.8], at(['Probes', 2], ['Monitor', 2])),
        channel('LP-2', [200, 202, 2.8, 4.8], at(['Probes', 3], ['Monitor', 3])),
        channel('LP-3', [250, 199, 2.8, 4.8], at(['Probes', 4], ['Added 2025', 2])),
      ],
      [
        ...twoTables,
        ...fields(
          'Added 2025!A tag',
          'Added 2025!B configured sensitivity',
          'Added 2025!C alert',
          'Added 2025!D danger',
        ),
      ],
    ),
    holds: readOrAsked,
  },
  {
    name: 'a whole list in words that nobody knows, but with units of sensitivity and displacement',
    because:
      'Rows 2 and 3 of a third sheet are channels of their own, a late one among them: read, or said as not read.',
    workbook: workbook(
      sheet('Probes', probes),
      sheet('Monitor', [
        settingsHeader,
        ['LP-1', 200, 2.8, 4.8],
        ['LP-2', 200, 2.8, 4.8],
        ['LP-3', 200, 2.8, 4.8],
      ]),
      sheet('Hall 2', [
        ['Taster', 'Wert neu (mV/µm)', 'Wert im Schrank (mV/µm)', 'Stufe 1 (µm)', 'Stufe 2 (µm)'],
        ['TW-71', 6.3, 7.87, 70, 120],
        ['TW-72', 7.9, 7.87, 70, 120],
      ]),
    ),
    truth: truth(
      [
        channel('LP-1', [200, 163, 2.8, 4.8], at(['Probes', 2], ['Monitor', 2])),
        channel('LP-2', [200, 202, 2.8, 4.8], at(['Probes', 3], ['Monitor', 3])),
        channel('LP-3', [200, 199, 2.8, 4.8], at(['Probes', 4], ['Monitor', 4])),
        channel('TW-71', [7.87 * 25.4, 6.3 * 25.4, 70 / 25.4, 120 / 25.4], at(['Hall 2', 2])),
        channel('TW-72', [7.87 * 25.4, 7.9 * 25.4, 70 / 25.4, 120 / 25.4], at(['Hall 2', 3])),
      ],
      [
        ...twoTables,
        ...fields(
          'Hall 2!A tag',
          'Hall 2!B measured sensitivity',
          'Hall 2!C configured sensitivity',
          'Hall 2!D alert',
          'Hall 2!E danger',
        ),
      ],
    ),
    holds: readOrAsked,
  },
  {
    name: 'words for nothing in optional cells',
    because:
      'n/a, -, TBC and none under full scale, limit and voting are blanks: each danger is judged all the same.',
    workbook: workbook(
      sheet('Probes', [
        ['Tag', 'Measured sensitivity (mV/mil)', 'Gap voltage (V)', 'Limit (mil)'],
        ['LP-1', 163, -9.6, 'n/a'],
        ['LP-2', 202, 'TBC', '-'],
        ['LP-3', 199, -9.4, 'none'],
      ]),
      sheet('Monitor', [
        [...settingsHeader, 'Full scale (mil)', 'Voting group', 'Voting'],
        ['LP-1', 200, 2.8, 4.8, 'n/a', '-', '-'],
        ['LP-2', 200, 2.8, 4.8, 'TBC', 'none', 'n/a'],
        ['LP-3', 200, 2.8, 4.8, 'none', 'n/a', 'none'],
      ]),
    ),
    truth: truth(
      [
        channel('LP-1', [200, 163, 2.8, 4.8], at(['Probes', 2], ['Monitor', 2]), {
          optional: { fullScale: null, limit: null, group: null, voting: null, gapVoltage: -9.6 },
        }),
        channel('LP-2', [200, 202, 2.8, 4.8], at(['Probes', 3], ['Monitor', 3]), {
          optional: { fullScale: null, limit: null, group: null, voting: null, gapVoltage: null },
        }),
        channel('LP-3', [200, 199, 2.8, 4.8], at(['Probes', 4], ['Monitor', 4]), {
          optional: { fullScale: null, limit: null, group: null, voting: null, gapVoltage: -9.4 },
        }),
      ],
      twoTables,
    ),
    holds: mustBeRead,
  },
  {
    name: 'total, average, mean and spare are no channels',
    because: 'The last rows sum up or are empty places; the mean of 188 mV/mil is nobody’s sensitivity.',
    workbook: workbook(
      sheet('Shaft probes', [
        [
          'Tag',
          'Measured sensitivity (mV/mil)',
          'Configured sensitivity (mV/mil)',
          'Alert (mil)',
          'Danger (mil)',
        ],
        ['LP-1', 163, 200, 2.8, 4.8],
        ['LP-2', 202, 200, 2.8, 4.8],
        ['LP-3', 199, 200, 2.8, 4.8],
        ['Average', 188, 200, 2.8, 4.8],
        ['Mean', 188, 200, 2.8, 4.8],
        ['Total', 3],
        ['spare'],
      ]),
    ),
    truth: truth(
      [
        channel('LP-1', [200, 163, 2.8, 4.8], at(['Shaft probes', 2])),
        channel('LP-2', [200, 202, 2.8, 4.8], at(['Shaft probes', 3])),
        channel('LP-3', [200, 199, 2.8, 4.8], at(['Shaft probes', 4])),
      ],
      fields(
        'Shaft probes!A tag',
        'Shaft probes!B measured sensitivity',
        'Shaft probes!C configured sensitivity',
        'Shaft probes!D alert',
        'Shaft probes!E danger',
      ),
      { mayBeIncomplete: ['spare'] },
    ),
    holds: mustBeRead,
  },
  ...(['thrust', 'axial'] as const).map((word, index): Guard => ({
    name: `the word ${word} under ${index === 0 ? 'Sensor' : 'Position'} makes a channel axial`,
    because:
      'Without its zero voltage an axial channel that is right in sensitivity is not known: as a radial one it would be within.',
    workbook: workbook(
      sheet('Probes', [
        ['Tag', index === 0 ? 'Sensor' : 'Position', 'Measured sensitivity (mV/mil)'],
        ['LP-1', index === 0 ? 'radial' : 'DE', 163],
        ['LP-2', word, 202],
      ]),
      sheet('Monitor', [settingsHeader, ['LP-1', 200, 2.8, 4.8], ['LP-2', 200, 20, 30]]),
    ),
    truth: truth(
      [
        channel('LP-1', [200, 163, 2.8, 4.8], at(['Probes', 2], ['Monitor', 2]), { kind: 'radial' }),
        channel('LP-2', [200, 202, 20, 30], at(['Probes', 3], ['Monitor', 3]), {
          kind: 'axial',
          verdict: 'incomplete',
        }),
      ],
      fields(
        'Probes!A tag',
        'Probes!C measured sensitivity',
        'Monitor!A tag',
        'Monitor!B configured sensitivity',
        'Monitor!C alert',
        'Monitor!D danger',
      ),
    ),
    holds: readOrAsked,
  })),
  {
    name: 'a word for casing velocity beside numbers of a displacement probe',
    because:
      'LP-2 is said to measure casing velocity, but has mV/mil and mil: word and numbers contradict, so a person says what it is.',
    workbook: workbook(
      sheet('Probes', [
        ['Tag', 'Type', 'Measured sensitivity (mV/mil)'],
        ['LP-1', 'shaft vibration', 163],
        ['LP-2', 'casing velocity', 202],
      ]),
      sheet('Monitor', [settingsHeader, ['LP-1', 200, 2.8, 4.8], ['LP-2', 200, 2.8, 4.8]]),
    ),
    truth: truth(
      [
        channel('LP-1', [200, 163, 2.8, 4.8], at(['Probes', 2], ['Monitor', 2]), { kind: 'radial' }),
        channel('LP-2', [200, 202, 2.8, 4.8], at(['Probes', 3], ['Monitor', 3]), {
          mustAsk: true,
          also: ['incomplete'],
        }),
      ],
      fields(
        'Probes!A tag',
        'Probes!C measured sensitivity',
        'Monitor!A tag',
        'Monitor!B configured sensitivity',
        'Monitor!C alert',
        'Monitor!D danger',
      ),
    ),
    holds: mustBeAsked,
  },
];
