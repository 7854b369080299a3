import { describe, expect, it } from 'vitest';
import { readDate } from '../../src/audit/read/rows/date.ts';
import { rowReader } from '../../src/audit/read/rows/rowReader.ts';
import {
  detectionWords,
  directionWords,
  flagWords,
  kindWords,
  meaningOf,
} from '../../src/audit/read/rows/words.ts';
import type { FoundColumn, ReadTable } from '../../src/audit/read/tables/found.ts';
import type { ColumnSpec } from '../../src/audit/read/tables/vocabulary.ts';
import { type Cell, DateCell, ErrorCell, cellText } from '../../src/cells/cell.ts';
import { parseUnit } from '../../src/units/parse.ts';
import { sheet } from './book.ts';

describe('a day', () => {
  const of = (year: number, month: number, day: number) => ({
    day: Date.UTC(year, month - 1, day) / 86_400_000,
  });

  it('is read where year or month are told for certain', () => {
    for (const cell of [
      '2025-03-14',
      ' 2025/3/14 ',
      '2025.03.14',
      '2025-03-14T10:00',
      '2025-03-14 23:59',
      '14 Mar 2025',
      '14-March-2025',
      '14 MAR 2025',
      '14.03.2025',
      '14/3/2025',
      new DateCell(of(2025, 3, 14).day),
      new DateCell(of(2025, 3, 14).day + 0.9),
      45_730,
      45_730.75,
    ])
      expect(readDate(cell), cellText(cell)).toEqual(of(2025, 3, 14));
    expect(readDate('29.02.2024')).toEqual(of(2024, 2, 29));
    expect(readDate('13/04/2025')).toEqual(of(2025, 4, 13));
    expect(readDate('31 dec 2025')).toEqual(of(2025, 12, 31));
    // The first and the last number that count as days: 1950-01-01 and 2099-12-31.
    expect(readDate(18_264)).toEqual(of(1950, 1, 1));
    expect(readDate(73_050)).toEqual(of(2099, 12, 31));
  });

  it('is none where it could be two, where the calendar has none, and where nothing says so', () => {
    for (const cell of ['03/04/2025', '3-4-2025', '03.04.25', '12/12/2025', '14/03/25'])
      expect(readDate(cell), cell).toEqual({ why: 'two different days' });
    for (const cell of ['2025-02-30', '2025-13-01', '2025-00-10', '31.04.2025', '29 Feb 2025', '14 Xyz 2025'])
      expect(readDate(cell), cell).toEqual({ why: 'no day of the calendar' });
    for (const cell of [
      'March 2025',
      '2025-03-14x',
      'on 14 Mar 2025',
      '14 Mar 2025 or so',
      '2025',
      '25-03-2025x',
      '114 Mar 2025',
    ])
      expect(readDate(cell), cell).toEqual({ why: 'no date' });
    for (const cell of [18_263, 73_051, true]) expect(readDate(cell)).toEqual({ why: 'no date' });
  });
});

describe('a word', () => {
  it('means what it says, however it is written', () => {
    expect(
      ['Radial', 'shaft vibration', 'THRUST', '4-20 mA', 'loop'].map((text) => meaningOf(kindWords, text)),
    ).toEqual(['radial', 'radial', 'axial', 'loop', 'loop']);
    expect(
      ['towards', 'Toward probe', 'away', 'away from probe'].map((text) => meaningOf(directionWords, text)),
    ).toEqual(['toward', 'toward', 'away', 'away']);
    expect(
      ['pk-pk', 'Peak to peak', '0-pk', 'peak', 'RMS'].map((text) => meaningOf(detectionWords, text)),
    ).toEqual(['p-p', 'p-p', '0-p', '0-p', 'rms']);
    for (const text of ['✓', '✔', '☑', 'Yes', 'x', '1', 'ON', 'ja', 'oui', 'sí', 'sim', 'bypassed', 'TRUE'])
      expect(meaningOf(flagWords, text), text).toBe(true);
    for (const text of ['-', '–', '☐', 'No', 'n', '0', 'off', 'nein', 'non', 'não', 'FALSE'])
      expect(meaningOf(flagWords, text), text).toBe(false);
    for (const text of ['maybe', 'yes?no', '2']) expect(meaningOf(flagWords, text), text).toBeUndefined();
  });
});

/** Row 2 of a sheet with these cells, whose columns have these ids from A on; `units`: the columns that name units. */
function reader(
  cells: readonly Cell[],
  columns: readonly (Partial<FoundColumn> & { readonly id: string })[],
  specs: Readonly<Record<string, ColumnSpec>>,
  units: readonly { readonly column: number; readonly names?: readonly string[] }[] = [],
  plainText?: { readonly decimal: ',' | '.' },
) {
  const table: ReadTable = {
    sheet: sheet('S', [[], cells], plainText ? { plainText } : {}),
    columns: new Map(
      columns.map((one, at) => [one.id, { column: at + 1, header: one.id, remarks: [], ...one }]),
    ),
    unitColumns: units.map(({ column, names = [] }) => ({ column, header: 'Unit', names: new Set(names) })),
  };
  const read = rowReader(table, specs);
  read.open(2);
  return read;
}

const mil = { name: 'danger', holds: 'number', dimensions: ['displacement'] } as const satisfies ColumnSpec;
const percent = {
  name: 'uncertainty',
  holds: 'number',
  dimensions: ['percent'],
  usualUnit: '%',
} as const satisfies ColumnSpec;

describe('the unit of a number', () => {
  /** The unit of the number in A by text, or the kind of fault, with a header of this unit and these cells beside it. */
  function unitOf(
    header: string | undefined,
    cells: readonly Cell[],
    units: readonly { readonly column: number; readonly names?: readonly string[] }[],
    spec: ColumnSpec = mil,
    remarks: readonly string[] = [],
  ): unknown {
    const unit = header === undefined ? undefined : parseUnit(header);
    const read = reader(
      [5, ...cells],
      [{ id: 'danger', remarks, ...(unit && { unit }) }],
      { danger: spec },
      units,
    );
    const amount = read.amount('danger');
    const [told] = read.diagnostics();
    if (told) return told.rule === 'unit-not-clear' ? told.values.kind : told.rule;
    return amount?.unit
      ? `${amount.unit.text}${amount.unit.detection ? ` ${amount.unit.detection}` : ''}`
      : amount;
  }

  it('is that of the header, else of the unit column, else the usual one, else none', () => {
    expect(unitOf('mil', [], [])).toBe('mil');
    expect(unitOf(undefined, ['mil'], [{ column: 2 }])).toBe('mil');
    expect(unitOf(undefined, [null], [{ column: 2 }])).toEqual({ value: 5, unit: null });
    expect(unitOf('mil', [null], [{ column: 2 }])).toBe('mil');
    expect(unitOf(undefined, [], [], percent)).toBe('%');
    // A bare unit column speaks for what has no usual unit; one that names the column speaks for any.
    expect(unitOf(undefined, ['mil'], [{ column: 2 }], percent)).toBe('%');
    const either = { ...percent, dimensions: ['percent', 'displacement'] } as const satisfies ColumnSpec;
    expect(unitOf(undefined, ['mil'], [{ column: 2, names: ['danger'] }], either)).toBe('mil');
    expect(unitOf(undefined, ['mil'], [{ column: 2, names: ['alert'] }])).toEqual({ value: 5, unit: null });
    expect(unitOf(undefined, ['um', 'mil'], [{ column: 2 }, { column: 3, names: ['danger'] }])).toBe('mil');
  });

  it('is not clear where header and row say two, where it does not fit, or where it is none', () => {
    expect(unitOf('mm/s', [], [])).toBe('header does not fit');
    expect(unitOf(undefined, [], [], mil, ['mil/foo'])).toBe('header not known');
    expect(unitOf('mil', ['um'], [{ column: 2 }])).toBe('header against row');
    expect(unitOf('mil p-p', ['mil 0-p'], [{ column: 2 }])).toBe('header against row');
    expect(unitOf(undefined, ['furlong'], [{ column: 2 }])).toBe('cell not known');
    expect(unitOf(undefined, [12], [{ column: 2 }])).toBe('cell not known');
    expect(unitOf(undefined, [null, 'mil', 'um'], [{ column: 3 }, { column: 4 }])).toBe('two in row');
  });

  it('takes what header and row say together, the column beside the number first', () => {
    expect(unitOf('mil', ['mil 0-p'], [{ column: 2 }])).toBe('mil 0-p');
    expect(unitOf('mil p-p', ['mil'], [{ column: 2 }])).toBe('mil p-p');
    expect(unitOf(undefined, ['mil', 'um'], [{ column: 3 }, { column: 2 }])).toBe('mil');
    expect(unitOf(undefined, [null, 'mil', 'mil'], [{ column: 3 }, { column: 4 }])).toBe('mil');
    // One for another quantity is passed over, and a strange one where another fits.
    expect(unitOf(undefined, ['mm/s', 'mil'], [{ column: 2 }, { column: 3 }])).toBe('mil');
    expect(unitOf(undefined, ['furlong', 'mil'], [{ column: 2 }, { column: 3 }])).toBe('mil');
  });
});

describe('a row', () => {
  const specs = {
    tag: { name: 'tag', holds: 'text' },
    location: { name: 'location', holds: 'text' },
    danger: mil,
    uncertainty: percent,
    calibratedOn: { name: 'calibrated on', holds: 'date' },
    kind: { name: 'kind', holds: 'choice' },
    bypass: { name: 'bypass', holds: 'flag' },
  } as const satisfies Readonly<Record<string, ColumnSpec>>;
  const one = (id: keyof typeof specs, cell: Cell, plainText?: { readonly decimal: ',' | '.' }) =>
    reader([cell], [{ id }], specs, [], plainText);
  const told = (read: ReturnType<typeof one>) =>
    read.diagnostics().map(({ rule, severity, column }) => `${rule} ${severity} ${column}`);

  it('says nothing by blanks and by signs for nothing; a tag is a tag, and a mark is a mark', () => {
    for (const cell of [null, '', '   ']) {
      const read = one('danger', cell);
      expect([read.amount('danger'), told(read)]).toEqual([null, []]);
    }
    for (const id of ['danger', 'calibratedOn', 'location', 'kind'] as const) {
      const read = one(id, ' n/a ');
      const found =
        id === 'danger'
          ? read.amount(id)
          : id === 'calibratedOn'
            ? read.day(id)
            : id === 'kind'
              ? read.word(id, kindWords)
              : read.text(id);
      expect(found || null, id).toBeNull();
      expect(told(read)).toEqual([`said-blank note ${id}`]);
    }
    expect(one('tag', '-').text('tag')).toBe('-');
    expect(one('bypass', '-').text('bypass')).toBe('-');
    const mark = one('bypass', '-');
    expect([mark.word('bypass', flagWords), told(mark)]).toEqual([false, []]);
    const open = one('bypass', 'n/a');
    expect([open.word('bypass', flagWords), told(open)]).toEqual([
      null,
      ['value-not-understood warning bypass'],
    ]);
    expect(one('danger', 5).amount('limit')).toBeNull();
    expect(one('danger', 5).text('location')).toBe('');
    expect([one('danger', 5).day('calibratedOn'), one('danger', 5).word('kind', kindWords)]).toEqual([
      null,
      null,
    ]);
  });

  it('says what is no number, no date and no word', () => {
    const number = (cell: Cell) => {
      const read = one('danger', cell);
      return [read.amount('danger'), ...told(read)];
    };
    expect(number('5')).toEqual([{ value: 5, unit: null }, 'number-written-as-text note danger']);
    expect(number('five')).toEqual([null, 'value-not-a-number warning danger']);
    expect(number(new ErrorCell('#DIV/0!'))).toEqual([null, 'value-is-an-error warning danger']);
    // A share of something is none of a length, but is of an uncertainty.
    expect(number('5 %')).toEqual([
      null,
      'number-written-as-text note danger',
      'value-not-a-number warning danger',
    ]);
    expect(one('uncertainty', '5%').amount('uncertainty')).toMatchObject({ value: 5, unit: { text: '%' } });
    expect(told(one('danger', 5))).toEqual([]);
    const date = one('calibratedOn', '03/04/2025');
    expect([date.day('calibratedOn'), told(date)]).toEqual([null, ['value-not-a-date warning calibratedOn']]);
    const word = one('kind', 'sideways');
    expect([word.word('kind', kindWords), told(word)]).toEqual([null, ['value-not-understood warning kind']]);
  });

  it('forgets what was wrong with the one before', () => {
    const read = one('danger', 'five');
    read.amount('danger');
    read.open(3);
    expect(read.diagnostics()).toEqual([]);
    expect(read.amount('danger')).toBeNull();
  });
});
