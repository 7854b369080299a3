import { describe, expect, it } from 'vitest';
import { DateCell, ErrorCell } from '../../src/cells/cell.ts';
import type { Workbook } from '../../src/cells/sheet.ts';
import { audit } from '../../src/audit/audit.ts';
import { finish } from '../../src/audit/model/steps.ts';
import { understand, type Understanding } from '../../src/audit/read/understand/understand.ts';
import { book, sheet, type Rows } from '../audit/book.ts';

const read = (workbook: Workbook, answers = {}): Understanding => finish(understand(workbook, answers));
const needed = ['measured', 'configured', 'alert', 'danger'] as const;
const rowsOf = ({ channels }: Understanding): (string | number | null)[][] =>
  channels.map(({ tag, machine, values }) => [
    tag,
    machine,
    ...needed.map((id) => values.get(id)?.amount?.value ?? null),
  ]);
const header = ['Tag', 'Tested SF (mV/mil)', 'Rack SF (mV/mil)', 'Alarm (mil)', 'Trip (mil)'];

describe('machines', () => {
  it('are of all lines below a name that stands once, where tags come again', () => {
    const found = read(
      book([
        'All',
        [
          ['Machine', ...header],
          ['Pump A', 'DE-X', 160, 200, 3, 5],
          [null, 'DE-Y', 161, 200, 3, 5],
          ['Pump B', 'DE-X', 201, 200, 3, 5],
          [null, 'DE-Y', 202, 200, 3, 5],
        ],
      ]),
    );
    expect(rowsOf(found).map(([tag, machine, measured]) => [tag, machine, measured])).toEqual([
      ['DE-X', 'Pump A', 160],
      ['DE-X', 'Pump B', 201],
      ['DE-Y', 'Pump A', 161],
      ['DE-Y', 'Pump B', 202],
    ]);
  });

  it('by headings are proposed, all in one question', () => {
    const rows: Rows = [header, ['Pump A'], ['A-1', 160, 200, 3, 5], ['Fan B'], ['B-1', 201, 200, 3, 5]];
    const found = read(book(['All', rows]));
    expect(rowsOf(found).map(([tag, machine]) => [tag, machine])).toEqual([
      ['A-1', ''],
      ['B-1', ''],
    ]);
    expect(found.questions.map(({ subject, options }) => [subject.is, options[0]?.text])).toEqual([
      ['machine', 'Pump A, Fan B'],
    ]);
    expect(rowsOf(read(book(['All', rows]), found.proposal)).map(([tag, machine]) => [tag, machine])).toEqual(
      [
        ['A-1', 'Pump A'],
        ['B-1', 'Fan B'],
      ],
    );
  });

  it('may be what tells whole lists apart that repeat their tags', () => {
    const lists = book(
      ['Rack 1', [header, ['1X', 160, 200, 3, 5], ['1Y', 201, 200, 3, 5]]],
      ['Rack 2', [header, ['1X', 190, 180, 2, 4], ['1Y', 181, 180, 2, 4]]],
    );
    const found = read(lists);
    expect(rowsOf(found).map(([, , ...values]) => values)).toEqual([
      [null, null, null, null],
      [null, null, null, null],
    ]);
    const again = rowsOf(read(lists, found.proposal));
    expect(again).toContainEqual(['1X', 'Rack 1', 160, 200, 3, 5]);
    expect(again).toContainEqual(['1X', 'Rack 2', 190, 180, 2, 4]);
  });
});

describe('questions', () => {
  it('are one for thirty sheets of one layout, and its answer is given to all of them', () => {
    const sheets = Array.from({ length: 30 }, (_, at): [string, Rows] => [
      `Train ${at + 1}`,
      [
        ['Tag', 'Tested SF (mV/mil)', 'Rack SF (mV/mil)', 'SP 1 (mil)', 'SP 2 (mil)'],
        [`T${at}-1`, 160, 200, 3, 5],
        [`T${at}-2`, 201, 200, 3, 5],
      ],
    ]);
    const found = read(book(...sheets));
    const fields = found.questions.filter(({ subject }) => subject.is === 'field');
    expect(fields.map(({ subject, sheets: about }) => [subject, about.length])).toEqual([
      [{ is: 'field', meaning: 'alert' }, 30],
      [{ is: 'field', meaning: 'danger' }, 30],
    ]);
    const again = rowsOf(read(book(...sheets), found.proposal));
    expect(again).toHaveLength(60);
    for (const [, , , , alert, danger] of again) expect([alert, danger]).toEqual([3, 5]);
  });

  it('ask which of two lines of one channel holds, the later one first', () => {
    const rows: Rows = [
      [...header, 'Tested on'],
      ['A-1', 160, 200, 3, 5, new DateCell(20_000)],
      ['A-1', 199, 200, 3, 5, new DateCell(20_300)],
      ['A-2', 201, 200, 3, 5, new DateCell(20_300)],
      ['A-3', 202, 200, 3, 5, new DateCell(20_300)],
    ];
    const found = read(book(['All', rows]));
    expect(
      found.questions.map(({ subject, options }) => [subject.is, options.map(({ text }) => text)]),
    ).toEqual([['line in force', ['3', '2']]]);
    expect(rowsOf(found)[0]).toEqual(['A-1', '', null, null, null, null]);
    expect(rowsOf(read(book(['All', rows]), found.proposal))[0]).toEqual(['A-1', '', 199, 200, 3, 5]);
  });

  it('name tables beside each other apart', () => {
    const side: Rows = [
      [
        'Tag',
        'SF A (mV/mil)',
        'SP 1 (mil)',
        'SP 2 (mil)',
        null,
        'Tag',
        'SF A (mV/mil)',
        'SP 1 (mil)',
        'SP 2 (mil)',
      ],
      ['A-1', 200, 3, 5, null, 'B-1', 190, 2, 4],
      ['A-2', 200, 3, 5, null, 'B-2', 190, 2, 4],
    ];
    const { proposal } = read(book(['All', side]));
    const again = read(book(['All', side]), proposal);
    expect(rowsOf(again).map(([tag, , , , alert, danger]) => [tag, alert, danger])).toEqual([
      ['A-1', 3, 5],
      ['A-2', 3, 5],
      ['B-1', 2, 4],
      ['B-2', 2, 4],
    ]);
  });
});

describe('what is not used', () => {
  it('are hidden sheets beside visible ones, though a tag stands in them alone', () => {
    const found = read(
      book(
        ['Probes', [header.slice(0, 2), ['A-1', 160], ['A-01', 199]]],
        [
          'Live',
          [
            ['Tag', ...header.slice(2)],
            ['A-1', 200, 3, 5],
            ['A-O1', 200, 3, 5],
          ],
        ],
        sheet(
          'Old',
          [
            ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
            ['A-01', 199, 9, 9.5],
          ],
          {
            hidden: true,
          },
        ),
      ),
    );
    expect(rowsOf(found)).toContainEqual(['A-01', '', 199, null, null, null]);
    expect(found.notUsed).toContainEqual(
      expect.objectContaining({ what: 'list', why: 'hidden', text: 'Old' }),
    );
  });

  it('are cells with errors, each with its place', () => {
    const found = read(
      book(['All', [header, ['A-1', new ErrorCell('#N/A'), 200, 3, 5], ['A-2', 201, 200, 3, 5]]]),
    );
    expect(rowsOf(found)[0]).toEqual(['A-1', '', null, 200, 3, 5]);
    expect(found.notUsed).toContainEqual(
      expect.objectContaining({ what: 'value', why: 'unusable', place: { sheet: 'All', row: 2, column: 2 } }),
    );
  });

  it('is a kind by its word where the units say another', () => {
    const found = read(
      book([
        'All',
        [
          [...header, 'Sensor'],
          ['A-1', 160, 200, 3, 5, 'casing velocity'],
          ['A-2', 201, 200, 3, 5, 'radial'],
        ],
      ]),
    );
    expect(found.channels.map(({ kind, kindSaid }) => [kind, kindSaid])).toEqual([
      [null, 'casing velocity'],
      ['radial', 'radial'],
    ]);
  });
});

describe('a no', () => {
  it('to tags spelled in two ways keeps both channels, and is not asked again', () => {
    const lists = book(
      [
        'Probes',
        [
          ['Tag', 'Tested SF (mV/mil)'],
          ['K-101 1X', 160],
          ['K-101 1Y', 201],
        ],
      ],
      [
        'Panel',
        [
          ['Tag', 'Rack SF (mV/mil)', 'Alarm (mil)', 'Trip (mil)'],
          ['K101-1X', 200, 3, 5],
          ['K-101 1Y', 200, 3, 5],
        ],
      ],
    );
    const found = read(lists);
    const [asked] = found.questions.filter(({ subject }) => subject.is === 'names');
    expect(asked?.options.map(({ answer }) => answer.names)).toEqual([
      { 'K101-1X': 'K-101 1X' },
      { 'K101-1X': 'K101-1X' },
    ]);
    const kept = read(lists, asked?.options[1]?.answer);
    expect(kept.questions.filter(({ subject }) => subject.is === 'names')).toEqual([]);
    expect(
      rowsOf(kept)
        .map(([tag]) => tag)
        .toSorted(),
    ).toEqual(['K-101 1X', 'K-101 1Y', 'K101-1X']);
  });

  it('to a number in doubt leaves it out, says so, and is not asked again', () => {
    const list = book(['All', [header, ['A-1', '~160', 200, 3, 5], ['A-2', 201, 200, 3, 5]]]);
    const [asked] = read(list).questions.filter(({ subject }) => subject.is === 'value');
    expect(asked?.options.map(({ answer }) => answer.cells)).toEqual([{ 'All!B2': 160 }, { 'All!B2': null }]);
    const left = read(list, asked?.options[1]?.answer);
    expect(left.questions).toEqual([]);
    expect(rowsOf(left)[0]).toEqual(['A-1', '', null, 200, 3, 5]);
    expect(left.notUsed).toContainEqual(
      expect.objectContaining({ what: 'value', why: 'unusable', place: { sheet: 'All', row: 2, column: 2 } }),
    );
    expect(rowsOf(read(list, asked?.options[0]?.answer))[0]).toEqual(['A-1', '', 160, 200, 3, 5]);
  });

  it('a confirmed number keeps the unit in its cell', () => {
    const list = book([
      'All',
      [
        ['Tag', 'Tested SF', 'Rack SF', 'Alarm (mil)', 'Trip (mil)'],
        ['A-1', '~6.3 mV/µm', '200 mV/mil', 3, 5],
        ['A-2', '7.9 mV/µm', '200 mV/mil', 3, 5],
      ],
    ]);
    const answer = read(list).questions.find(({ subject }) => subject.is === 'value')?.options[0]?.answer;
    expect(read(list, answer).channels[0]?.values.get('measured')?.amount?.unit?.text).toBe('mV/µm');
  });
});

describe('checks with a known vibration', () => {
  const list: Rows = [header, ['VT-1', 160, 200, 3, 5], ['VT-2', 201, 200, 3, 5]];
  const checks = (...more: readonly string[]): Rows => [
    ['Tag no.', 'Displacement (mil p-p)', 'Output (mV p-p)', ...more],
    ...[2, 4, 6].map((level) => ['VT-1', level, 160 * level, ...more.map(() => level)]),
  ];

  it('are not asked about where their headers say what they are, and are judged by', () => {
    const workbook = book(['Rack', list], ['Shaker', checks()]);
    const found = read(workbook);
    expect(found.questions).toEqual([]);
    expect(found.notUsed).toEqual([]);
    const report = audit(workbook);
    expect(report.proposal).not.toBeNull();
    expect(report.channels.find(({ tag }) => tag === 'VT-1')?.dynamic).not.toBeNull();
  });

  it('are said where a column beside them could hold what a channel needs', () => {
    const { notUsed, questions } = read(book(['Rack', list], ['Shaker', checks('Trip (mil)')]));
    const sheets = [...notUsed.map(({ place }) => place.sheet), ...questions.flatMap((one) => one.sheets)];
    expect(sheets).toContain('Shaker');
  });
});
