import { readFileSync, readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Sheet, Workbook } from '../../src/cells/sheet.ts';
import { finish } from '../../src/audit/model/steps.ts';
import { channelRowReader } from '../../src/audit/read/rows/channelRow.ts';
import type { Amount } from '../../src/audit/read/rows/rowReader.ts';
import { settingsRowReader } from '../../src/audit/read/rows/settingsRow.ts';
import { indexTags, tagAt } from '../../src/audit/read/join/tagIndex.ts';
import { findTables } from '../../src/audit/read/tables/findTables.ts';
import { tagKey } from '../../src/audit/read/tables/tagKey.ts';
import type { MeaningId } from '../../src/audit/read/understand/meaning.ts';
import type { ReadChannel } from '../../src/audit/read/understand/readings/channel.ts';
import { understand, type Understanding } from '../../src/audit/read/understand/understand.ts';
import { readWorkbook } from '../../src/hosts/file/read/workbook.ts';
import { goldenCases } from '../audit/goldenCases.ts';
import { book, sheet, type Rows } from '../audit/book.ts';

const read = (workbook: Workbook, answers = {}): Understanding => finish(understand(workbook, answers));
const channel = (from: Understanding, tag: string, machine = ''): ReadChannel =>
  from.channels.find((one) => one.tag === tag && (machine === '' || one.machine === machine))!;
const numbers = ({ values }: ReadChannel, ...ids: readonly MeaningId[]): (string | null)[] =>
  ids.map((id) => {
    const amount = values.get(id)?.amount;
    return amount ? `${amount.value} ${amount.unit?.text ?? ''}` : null;
  });
const inBase = ({ value, unit }: Amount): number => value * (unit?.factor ?? NaN);
const needed = ['measured', 'configured', 'alert', 'danger'] as const;
const asked = ({ questions }: Understanding): string[] =>
  questions.map(({ subject }) => ('meaning' in subject ? `${subject.is} ${subject.meaning}` : subject.is));

describe('plant words', () => {
  it('name columns by word, unit and neighbours together', () => {
    const found = read(
      book(
        [
          'Prüfung',
          [
            ['Messstelle', 'Aggregat', 'Ist-Kennwert [mV/µm]', 'Spaltspannung [V]'],
            ['VT-1A', 'Gebläse', '7,1', '-9,8'],
            ['VT-1B', 'Gebläse', '7,9', '-9,9'],
          ],
        ],
        [
          'Schutz',
          [
            ['Messstelle', 'Kennwert eingestellt [mV/µm]', 'Warnung [µm SS]', 'Abschaltung [µm SS]'],
            ['VT-1B', 7.87, 60, 100],
            ['VT-1A', 7.87, 60, 100],
          ],
        ],
      ),
    );
    expect(numbers(channel(found, 'VT-1A'), ...needed)).toEqual([
      '7.1 mV/µm',
      '7.87 mV/µm',
      '60 µm',
      '100 µm',
    ]);
    expect(channel(found, 'VT-1A').machine).toBe('Gebläse');
    expect(channel(found, 'VT-1A').values.get('danger')?.amount?.unit?.detection).toBe('p-p');
    expect(found.questions).toEqual([]);
  });

  it('alone are asked, and what is proposed reads right when it is given back', () => {
    const rows: Rows = [
      ['Tag', 'Scale factor at test', 'SP 1', 'SP 2', 'Rack SF'],
      ['A-1', 160, 3, 5, 200],
      ['A-2', 201, 3, 5, 200],
    ];
    const found = read(book(['Data', rows]));
    expect(numbers(channel(found, 'A-1'), ...needed)).toEqual([null, null, null, null]);
    expect(asked(found)).toContain('field danger');
    const again = read(book(['Data', rows]), found.proposal);
    expect(numbers(channel(again, 'A-1'), ...needed)).toEqual(['160 mV/mil', '200 mV/mil', '3 mil', '5 mil']);
    expect(again.questions.filter((question) => question.needed)).toEqual([]);
    const moved = [rows[0]!.with(1, 'Output at works'), ...rows.slice(1)];
    expect(numbers(channel(read(book(['Data', moved]), found.proposal), 'A-1'), 'measured')).toEqual([null]);
  });

  it('that only count are no alert and danger unasked', () => {
    const found = read(
      book([
        'All',
        [
          [
            'Tag',
            'Measured sensitivity (mV/mil)',
            'Configured sensitivity (mV/mil)',
            'SP 1 (mil)',
            'SP 2 (mil)',
          ],
          ['A-1', 160, 200, 3, 5],
        ],
      ]),
    );
    expect(numbers(channel(found, 'A-1'), ...needed)).toEqual(['160 mV/mil', '200 mV/mil', null, null]);
    expect(asked(found)).toEqual(['field alert', 'field danger']);
  });

  it.each([
    ['H (mil)', 'HH (mil)'],
    ['A1, mil', 'A2, mil'],
  ])('%s and %s count together and in order', (low, high) => {
    const table = (one: number, other: number) =>
      read(
        book([
          'All',
          [
            ['Tag', 'Measured sensitivity (mV/mil)', 'Configured sensitivity (mV/mil)', low, high],
            ['A-1', 160, 200, one, other],
          ],
        ]),
      );
    expect(numbers(channel(table(3, 5), 'A-1'), 'alert', 'danger')).toEqual(['3 mil', '5 mil']);
    expect(numbers(channel(table(5, 3), 'A-1'), 'alert', 'danger')).toEqual([null, null]);
  });
});

describe('guards', () => {
  const settings: readonly [string, Rows] = [
    'Monitor',
    [
      ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
      ['A-1', 200, 3, 5],
      ['A-2', 200, 3, 5],
    ],
  ];

  it('a hidden standard column yields to a visible one in other words, and is named', () => {
    const list = sheet(
      'List',
      [
        ['Tag', 'Measured sensitivity (mV/mil)', 'Meas. sens. 03/2025 (mV/mil)', 'Gap voltage (V)'],
        ['A-1', 200, 160, -9],
        ['A-2', 200, 199, -9],
      ],
      { hiddenColumns: new Set([2]) },
    );
    const found = read(book(list, settings));
    expect(numbers(channel(found, 'A-1'), 'measured')).toEqual(['160 mV/mil']);
    expect(found.notUsed).toContainEqual(
      expect.objectContaining({ why: 'hidden', text: 'Measured sensitivity (mV/mil)' }),
    );
  });

  it('a merged header over two columns of values is no header of the first', () => {
    const list = sheet(
      'List',
      [
        ['Tag', 'Measured sensitivity (mV/mil)'],
        ['A-1', 200, 160],
        ['A-2', 200, 199],
      ],
      { merged: [{ top: 1, left: 2, bottom: 1, right: 3 }] },
    );
    const found = read(book(list, settings));
    expect(numbers(channel(found, 'A-1'), 'measured')).toEqual([null]);
    expect(asked(found)).toContain('field measured');
  });

  it('numbers that count the rows are no names where unique ones stand beside them', () => {
    const found = read(
      book(
        [
          'List',
          [
            ['Channel', 'Instrument', 'Measured sensitivity (mV/mil)'],
            [1, 'A-1', 160],
            [2, 'A-2', 200],
          ],
        ],
        [
          'Monitor',
          [
            ['Channel', 'Instrument', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
            [1, 'A-2', 100, 3, 5],
            [2, 'A-1', 200, 3, 5],
          ],
        ],
      ),
    );
    expect(numbers(channel(found, 'A-1'), 'measured', 'configured')).toEqual(['160 mV/mil', '200 mV/mil']);
  });

  it('measured on a sheet called as left is as left', () => {
    const header = ['Tag', 'Measured sensitivity (mV/mil)'];
    const found = read(
      book(
        ['As left', [header, ['A-1', 200], ['A-2', 201]]],
        ['As found', [header, ['A-1', 160], ['A-2', 199]]],
        settings,
      ),
    );
    expect(numbers(channel(found, 'A-1'), 'measured', 'asLeftSensitivity')).toEqual([
      '160 mV/mil',
      '200 mV/mil',
    ]);
  });

  it('two lists of settings that differ are asked, with both named', () => {
    const other: readonly [string, Rows] = [
      'Proposed',
      [settings[1][0]!, ['A-1', 160, 2, 4], ['A-2', 200, 3, 5]],
    ];
    const found = read(
      book(
        [
          'List',
          [
            ['Tag', 'Measured sensitivity (mV/mil)'],
            ['A-1', 160],
            ['A-2', 200],
          ],
        ],
        other,
        settings,
      ),
    );
    expect(numbers(channel(found, 'A-1'), 'configured', 'danger')).toEqual([null, null]);
    const question = found.questions.find(({ subject }) => subject.is === 'list in force')!;
    expect(question.options.map(({ text }) => text)).toEqual(['Monitor', 'Proposed']);
    expect(
      numbers(
        channel(
          read(
            book(
              [
                'List',
                [
                  ['Tag', 'Measured sensitivity (mV/mil)'],
                  ['A-1', 160],
                  ['A-2', 200],
                ],
              ],
              other,
              settings,
            ),
            question.options[0]!.answer,
          ),
          'A-1',
        ),
        'danger',
      ),
    ).toEqual(['5 mil']);
  });

  it('cells with words are blanks, doubts or other units, never bare numbers', () => {
    const list = (value: string) =>
      read(
        book(
          [
            'List',
            [
              ['Tag', 'Measured sensitivity (mV/mil)'],
              ['A-1', value],
              ['A-2', 200],
            ],
          ],
          settings,
        ),
      );
    const of = (value: string) => numbers(channel(list(value), 'A-1'), 'measured')[0];
    expect(
      ['158 mV/mil', '6.7 mV/µm', '~160', '160 (see note)', '<190', 'TBC', '2O1', '195 / 168'].map(of),
    ).toEqual(['158 mV/mil', `${6.7 * 25.4} mV/mil`, null, null, null, null, null, null]);
    const found = list('~160');
    expect(
      numbers(
        channel(
          read(
            book(
              [
                'List',
                [
                  ['Tag', 'Measured sensitivity (mV/mil)'],
                  ['A-1', '~160'],
                  ['A-2', 200],
                ],
              ],
              settings,
            ),
            found.proposal,
          ),
          'A-1',
        ),
        'measured',
      ),
    ).toEqual(['160 mV/mil']);
  });

  it('names that are nearly spelled alike are offered, never joined', () => {
    const workbook = book(
      [
        'List',
        [
          ['Tag', 'Measured sensitivity (mV/mil)'],
          ['K-101 1X', 160],
          ['K-101 1Y', 200],
        ],
      ],
      [
        'Monitor',
        [
          ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
          ['K101-1X', 200, 3, 5],
          ['K-101 1Y', 200, 3, 5],
        ],
      ],
    );
    const found = read(workbook);
    expect(numbers(channel(found, 'K-101 1X'), 'configured')).toEqual([null]);
    expect(asked(found)).toEqual(['names']);
    expect(numbers(channel(read(workbook, found.proposal), 'K-101 1X'), 'measured', 'configured')).toEqual([
      '160 mV/mil',
      '200 mV/mil',
    ]);
  });
});

describe('layouts', () => {
  it('reads tables on their side, forms, and setpoints in per cent of full scale', () => {
    const onSide = read(
      book([
        'Data',
        [
          ['Tag', 'V-1', 'V-2', 'V-3'],
          ['Measured sensitivity (mV/mil)', 160, 200, 210],
          ['Configured sensitivity (mV/mil)', 200, 200, 200],
          ['Alert (% FS)', 30, 30, 30],
          ['Danger (% FS)', 50, 50, 50],
          ['Full scale (mil)', 10, 10, 20],
        ],
      ]),
    );
    expect(numbers(channel(onSide, 'V-3'), ...needed)).toEqual([
      '210 mV/mil',
      '200 mV/mil',
      '6 mil',
      '10 mil',
    ]);
    const form = (tag: string, measured: number): Rows => [
      ['Tag', tag],
      ['Machine', 'Pump'],
      ['Measured sensitivity', measured, 'mV/mil'],
      ['Configured sensitivity', 200, 'mV/mil'],
      ['Alert', 3, 'mil'],
      ['Danger', 5, 'mil'],
      [],
    ];
    const forms = read(book(['Forms', [...form('F-1', 160), ...form('F-2', 201)]]));
    expect(forms.channels.map((one) => [one.tag, ...numbers(one, 'measured', 'danger')])).toEqual([
      ['F-1', '160 mV/mil', '5 mil'],
      ['F-2', '201 mV/mil', '5 mil'],
    ]);
  });
});

/** Rows that today's reader takes for tags and says to be headings: here they are none from the start. */
const headings = new Set([
  'Page 2',
  'Turbine train',
  '* as found on the last outage',
  'Rack 2',
  'Monitor',
  'Probes in stores: none at present',
]);

describe('tidy layouts', async () => {
  const folder = new URL('../../workbooks/', import.meta.url);
  const files = readdirSync(folder).filter((name) => name.endsWith('.xlsx'));
  const tidy: readonly [string, Workbook][] = [
    ...(await goldenCases())
      .filter(([, { map, refused, standard = true }]) => standard && !map && !refused)
      .map(([name, golden]): [string, Workbook] => [name, golden.book]),
    ...files.map((name): [string, Workbook] => [
      name,
      readWorkbook(name, readFileSync(new URL(name, folder))),
    ]),
  ];

  it.each(tidy)('%s reads as today', (_, workbook) => {
    const today = findTables(workbook);
    const found = read(workbook);
    const byTag = new Map(found.channels.map((one) => [tagKey(one.tag), one]));
    for (const kind of ['channels', 'settings'] as const) {
      const table = today[kind];
      const rows = indexTags(table);
      const rowOf = kind === 'channels' ? channelRowReader(table) : settingsRowReader(table);
      for (const row of rows.tagged) {
        const tag = tagAt(table, row);
        const own = byTag.get(tagKey(tag));
        if (headings.has(tag)) continue;
        expect(own, tag).toBeDefined();
        if (rows.rowsOf(tagKey(tag)).length > 1) continue;
        const old = rowOf(row) as unknown as Record<string, Amount | null>;
        for (const id of kind === 'channels'
          ? (['measured', 'gapVoltage', 'limit', 'asLeftSensitivity'] as const)
          : (['configured', 'alert', 'danger', 'fullScale'] as const)) {
          const before = old[id];
          // What the tables contradict each other about is not chosen, as the audit does not choose it either.
          if (own!.troubles.some(({ meanings }) => meanings.includes(id)))
            expect(numbers(own!, id), `${tag} ${id}`).toEqual([null]);
          else if (before) {
            // The same in both tables, it may come from either of them.
            const now = own!.values.get(id)?.amount;
            const units = [before.unit?.text ?? '', now?.unit?.text ?? ''];
            if (now && units[0] !== units[1])
              expect(inBase(now), `${tag} ${id}`).toBeCloseTo(inBase(before), 9);
            else
              expect(numbers(own!, id), `${tag} ${id}`).toEqual([
                `${before.value} ${before.unit?.text ?? ''}`,
              ]);
          }
        }
      }
    }
  });
});

describe('a large workbook', () => {
  it('is understood in steps', () => {
    const rows: Rows = [
      ['Tag', 'Measured sensitivity (mV/mil)'],
      ...Array.from({ length: 5000 }, (_, at) => [`T-${at}`, 200]),
    ];
    const large: Sheet = sheet('List', rows);
    const steps = understand(book(large));
    let count = 0;
    for (let step = steps.next(); !step.done; step = steps.next()) count++;
    expect(count).toBeGreaterThan(5);
  });
});
