import { describe, expect, it } from 'vitest';
import { DateCell, ErrorCell, type Cell } from '../../src/cells/cell.ts';
import { catalogue } from '../../src/functions/catalogue.ts';
import { effectiveFormula } from '../../src/pane/quick/formula.ts';
import { takeFrom, takeByRoles, type Taken } from '../../src/pane/quick/fromSelection.ts';
import { readQuick } from '../../src/pane/quick/quickAnswer.ts';
import {
  emptyQuick,
  quickReducer,
  type QuickAction,
  type QuickField,
  type QuickState,
} from '../../src/pane/quick/quickState.ts';

function typed(texts: Partial<Record<QuickField, string>>, ...more: QuickAction[]): QuickState {
  const entries = Object.entries(texts) as [QuickField, string][];
  const actions = entries.map(([field, text]): QuickAction => ({ type: 'typed', field, text }));
  return [...actions, ...more].reduce(quickReducer, emptyQuick);
}

const usual = { setpoint: '5.0', configured: '200', measured: '160' };

describe('quick answer', () => {
  it('says where a danger acts and how late', () => {
    // By hand: 5·200/160 = 6.25; 6.25 − 5 = 1.25; 200/160 − 1 = 25 %.
    const { answer } = readQuick(typed(usual));
    expect(answer?.sentence).toBe('Danger 5.0 mil really trips at 6.25 mil: 1.25 mil (25 %) late.');
    expect(answer?.effective).toBe(6.25);
    expect(answer?.verdict).toBe('late');
    expect(answer?.details[0]).toContain('the monitor shows 4 mil');
  });

  it('says early, and as intended', () => {
    // 3·200/240 = 2.5 by hand.
    const early = typed(
      { setpoint: '3', configured: '200', measured: '240' },
      { type: 'kind', kind: 'alert' },
    );
    expect(readQuick(early).answer?.sentence).toBe(
      'Alert 3 mil really alarms at 2.5 mil: 0.5 mil (16.7 %) early.',
    );
    const right = typed(
      { setpoint: '125', configured: '7.87', measured: '7.87' },
      { type: 'unit', unit: 'µm' },
    );
    expect(readQuick(right).answer?.sentence).toBe('Danger 125 µm really trips at 125 µm, as intended.');
  });

  it('gives the band where an uncertainty is given', () => {
    // 6.25/1.03 and 6.25/0.97 by hand.
    const { answer } = readQuick(typed({ ...usual, uncertainty: '3' }));
    expect(answer?.low).toBeCloseTo(6.0679611650485, 12);
    expect(answer?.high).toBeCloseTo(6.4432989690722, 12);
  });

  it('takes a decimal comma where it can be nothing else', () => {
    expect(
      readQuick(typed({ setpoint: '5,5', configured: '200', measured: '160' })).answer?.values.setpoint,
    ).toBe(5.5);
    expect(readQuick(typed({ ...usual, configured: '1,234' })).faults.configured).toContain(
      'thousands comma',
    );
  });

  it.each([
    ['setpoint', '0'],
    ['setpoint', '-5'],
    ['setpoint', 'five'],
    ['configured', '0'],
    ['measured', '-160'],
    ['measured', '5 %'],
    ['uncertainty', '100'],
    ['uncertainty', '-1'],
    ['uncertainty', '1e999'],
  ] as const)('complains at the field %s about %s and answers nothing', (field, text) => {
    const { answer, faults } = readQuick(typed({ ...usual, uncertainty: '3', [field]: text }));
    expect(answer).toBeNull();
    expect(Object.keys(faults)).toEqual([field]);
  });

  it('has no complaint about what is not filled in yet', () => {
    expect(readQuick(typed({ setpoint: '5' }))).toEqual({ answer: null, faults: {} });
  });
});

type Rows = readonly (readonly Cell[])[];

const usualRows: Rows = [
  ['Channel list'],
  ['Tag', 'Danger (mil)', 'Measured (mV/mil)', 'Configured (mV/mil)'],
  ['V-1', 5, 160, 200],
  ['V-2', 4, 190, 200],
];
/** Takes from an area of a sheet: top, left, bottom, right. */
function take(rows: Rows, ...[top, left, bottom = top, right = left]: readonly number[]) {
  return takeFrom({ name: 'Monitor', rows }, { top: top!, left: left!, bottom: bottom!, right: right! });
}
function fieldsOf(taken: Taken): Record<string, number> {
  if (!('take' in taken)) throw new Error(JSON.stringify(taken));
  return Object.fromEntries(taken.take.cells.map(({ field, value }) => [field, value]));
}
function refusalOf(taken: Taken): string {
  return 'refusal' in taken ? taken.refusal : '';
}
const all = { setpoint: 5, configured: 200, measured: 160 };

describe('taking from the selection', () => {
  it('goes by headers, not by the order of the cells', () => {
    const taken = take(usualRows, 3, 2, 3, 4);
    expect(fieldsOf(taken)).toEqual(all);
    expect('take' in taken && taken.take).toMatchObject({ kind: 'danger', unit: 'mil' });
    expect(
      'take' in taken && taken.take.cells.map(({ field, place }) => [field, place?.row, place?.column]),
    ).toEqual([
      ['setpoint', 3, 2],
      ['configured', 3, 4],
      ['measured', 3, 3],
    ]);
  });

  it.each([
    ['a whole row', [3, 1, 3, 16_384]],
    ['the tag of a row', [3, 1]],
    ['one number of a row', [3, 3]],
    ['header and numbers together', [2, 2, 3, 4]],
  ] as const)('takes from %s', (_, area) => {
    expect(fieldsOf(take(usualRows, ...area))).toEqual(all);
  });

  it.each([
    [
      'labels beside the numbers',
      [
        ['Danger', 5],
        ['Measured', 160],
        ['Configured', 200],
      ],
      [1, 2, 3, 2],
    ],
    [
      'labels with units in a cell of their own',
      [
        ['Danger', 'mil', 5],
        ['Configured sensitivity', 'mV/mil', 200],
        ['Measured sensitivity', 'mV/mil', 160],
      ],
      [1, 3, 3, 3],
    ],
    [
      'units behind the numbers',
      [
        ['Trip', 5, 'mil'],
        ['Sensitivity measured', 160, 'mV/mil'],
        ['Sensitivity in monitor', 200, 'mV/mil'],
      ],
      [1, 2, 3, 2],
    ],
    [
      'German headers',
      [
        ['Abschaltung', 'Eingestellter Kennwert', 'Gemessener Kennwert'],
        [5, 200, 160],
      ],
      [2, 1, 2, 3],
    ],
    [
      'units in a row of their own',
      [
        ['Danger', 'Measured', 'Configured'],
        ['mil', 'mV/mil', 'mV/mil'],
        [5, 160, 200],
      ],
      [3, 1, 3, 3],
    ],
  ] as const)('reads %s', (_, rows, area) => {
    expect(fieldsOf(take(rows as unknown as Rows, ...area))).toEqual(all);
  });

  it('takes the column of a header cell whose labels stand to the left', () => {
    const rows: Rows = [
      ['', 'V-1', 'V-2'],
      ['Danger (mil)', 5, 4],
      ['Configured sensitivity (mV/mil)', 200, 200],
      ['Measured sensitivity (mV/mil)', 160, 190],
    ];
    expect(fieldsOf(take(rows, 1, 2))).toEqual(all);
    expect(fieldsOf(take(rows, 1, 3))).toEqual({ setpoint: 4, configured: 200, measured: 190 });
  });

  it('takes the only row below a header cell, and none of several', () => {
    expect(fieldsOf(take(usualRows.slice(0, 3), 2, 2))).toEqual(all);
    expect(refusalOf(take(usualRows, 2, 2))).toContain('Select a row');
    expect(refusalOf(take(usualRows, 3, 2, 4, 4))).toBe('Several rows are selected. Select one.');
  });

  it('takes danger before alert, and says where the alert stands', () => {
    const rows: Rows = [
      ['Tag', 'Alert (mil)', 'Danger (mil)', 'Configured (mV/mil)', 'Full scale (mil)', 'Measured (mV/mil)'],
      ['V-1', 3, 5, 200, 10, 160],
    ];
    const taken = take(rows, 2, 1, 2, 16_384);
    expect(fieldsOf(taken)).toEqual(all);
    expect('take' in taken && taken.take.said.join(' ')).toContain('The alert is in Monitor!B2');
    expect(fieldsOf(take(rows, 2, 2, 2, 2))).toEqual(all);
  });

  it('passes over what is as left, of another year, or another quantity', () => {
    const rows: Rows = [
      [
        'Danger (mil)',
        'Delay danger (s)',
        'Sensitivity as left (mV/mil)',
        'Sensitivity as found (mV/mil)',
        'Configured sensitivity (mV/mil)',
        'Gap voltage (V)',
        'Limit (mil)',
      ],
      [5, 3, 201, 160, 200, -10, 6],
    ];
    expect(fieldsOf(take(rows, 2, 1))).toEqual(all);
  });

  it('brings both sensitivities into one unit, and says so', () => {
    const rows: Rows = [
      ['Danger (mil)', 'Measured (mV/µm)', 'Configured (mV/mil)'],
      [5, 6.3, 200],
    ];
    const taken = take(rows, 2, 1, 2, 3);
    // 6.3 mV/µm · 25.4 µm/mil = 160.02 mV/mil, by hand.
    expect(fieldsOf(taken)['measured']).toBeCloseTo(160.02, 10);
    expect('take' in taken && taken.take.cells.find(({ field }) => field === 'measured')?.place).toBeNull();
    expect('take' in taken && taken.take.said[0]).toContain('from mV/µm into mV/mil');
    const other: Rows = [
      ['Danger (mil)', 'Measured (mV/(mm/s))', 'Configured (mV/mil)'],
      [5, 6.3, 200],
    ];
    expect(refusalOf(take(other, 2, 1, 2, 3))).toContain('different things');
  });

  it('takes what is there of a list in two parts, and leaves the rest', () => {
    const rows: Rows = [
      ['Tag', 'Configured sensitivity (mV/mil)', 'Danger (mil)'],
      ['V-1', 200, 5],
    ];
    expect(fieldsOf(take(rows, 2, 1))).toEqual({ setpoint: 5, configured: 200 });
  });

  it('asks where no header tells, and never goes by the order alone', () => {
    const taken = take([[5, 200, 160]], 1, 1, 1, 3);
    expect('ask' in taken && taken.guess).toEqual([null, null, null]);
    const found = 'ask' in taken ? taken.ask : [];
    expect(fieldsOf(takeByRoles(found, ['danger', 'configured', 'measured']))).toEqual(all);
    expect(fieldsOf(takeByRoles(found, ['danger', 'measured', 'configured']))).toEqual({
      ...all,
      configured: 160,
      measured: 200,
    });
  });

  it('asks which of two sensitivities is which', () => {
    const rows: Rows = [
      ['Danger (mil)', 'Sensitivity (mV/mil)', 'Scale factor B (mV/mil)'],
      [5, 160, 200],
    ];
    const taken = take(rows, 2, 1, 2, 3);
    expect('ask' in taken && taken.ask.map(({ place }) => place.column)).toEqual([1, 2, 3]);
    expect('ask' in taken && taken.guess[0]).toBe('danger');
  });

  it('proposes for the one cell that no header names what is left, and still asks', () => {
    const rows: Rows = [
      ['Danger (mil)', 'Configured (mV/mil)', 'x'],
      [5, 200, 160],
    ];
    const taken = take(rows, 2, 1, 2, 3);
    expect('ask' in taken && taken.guess).toEqual(['danger', 'configured', 'measured']);
  });

  it('says what to select where nothing tells', () => {
    expect(refusalOf(take([[5]], 1, 1))).toContain('one filled cell');
    expect(refusalOf(take([[null]], 1, 1))).toContain('no filled cell');
    expect(refusalOf(take([Array.from({ length: 9 }, (_, at) => at + 1)], 1, 1, 1, 9))).toContain(
      '9 numbers',
    );
  });

  it.each([['text'], [new ErrorCell('#N/A')], [new DateCell(20_000)], [true]])(
    'names a cell that is no number: %o',
    (cell) => {
      const rows: Rows = [
        ['Danger (mil)', 'Configured (mV/mil)', 'Measured (mV/mil)'],
        [5, 200, cell],
      ];
      expect(refusalOf(take(rows, 2, 1, 2, 3))).toContain('Monitor!C2');
    },
  );

  it('leaves the fields that it does not take, and a field that is typed over is no longer that of its cell', () => {
    const taken = take(usualRows, 3, 2, 3, 4);
    const cells = 'take' in taken ? taken.take.cells : [];
    const took = quickReducer(emptyQuick, { type: 'took', cells, kind: 'alert', unit: 'µm' });
    expect(took).toMatchObject({ kind: 'alert', unit: 'µm' });
    expect(Object.keys(took.sources)).toEqual(['setpoint', 'configured', 'measured']);
    const changed = quickReducer(took, { type: 'typed', field: 'measured', text: '170' });
    expect(Object.keys(changed.sources)).toEqual(['setpoint', 'configured']);
    expect(changed.texts.measured).toBe('170');
    expect(took.texts.measured).toBe('160');
    const part = quickReducer(changed, { type: 'took', cells: cells.slice(0, 1), kind: null, unit: null });
    expect(part).toMatchObject({ kind: 'alert', texts: { measured: '170', configured: '200' } });
  });
});

describe('formula', () => {
  const values = { setpoint: 5, configured: 200, measured: 160.5, uncertainty: null };
  const target = { sheet: 'Monitor', row: 2, column: 8 };

  it('refers to cells that fields were taken from, with the sheet where it is another', () => {
    const sources = {
      setpoint: { sheet: 'Monitor', row: 2, column: 4 },
      measured: { sheet: "Bob's <list>", row: 14, column: 28 },
    };
    expect(effectiveFormula(values, sources, target)).toBe(
      "=TRIPDRIFT.EFFECTIVE(D2,200,'Bob''s <list>'!AB14)",
    );
  });

  it('holds plain numbers with a decimal point otherwise', () => {
    expect(effectiveFormula(values, {}, target)).toBe('=TRIPDRIFT.EFFECTIVE(5,200,160.5)');
    expect(effectiveFormula({ ...values, setpoint: 1e-7 }, {}, target)).toBe(
      '=TRIPDRIFT.EFFECTIVE(1E-7,200,160.5)',
    );
  });

  it('names a function that the worksheet functions have, with its arguments in their order', () => {
    const declared = catalogue.find(({ id }) => id === 'EFFECTIVE')!;
    expect(declared.arguments.slice(0, 3).map(({ name }) => name)).toEqual([
      'setpoint',
      'configured',
      'measured',
    ]);
  });
});
