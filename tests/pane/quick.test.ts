import { describe, expect, it } from 'vitest';
import { DateCell, ErrorCell, type Cell } from '../../src/cells/cell.ts';
import { catalogue } from '../../src/functions/catalogue.ts';
import type { Selection } from '../../src/hosts/port/port.ts';
import { effectiveFormula } from '../../src/pane/quick/formula.ts';
import { takeThree } from '../../src/pane/quick/QuickView.tsx';
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
    expect(readQuick(typed({ ...usual, configured: '1,234' })).complaints.configured).toContain(
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
    const { answer, complaints } = readQuick(typed({ ...usual, uncertainty: '3', [field]: text }));
    expect(answer).toBeNull();
    expect(Object.keys(complaints)).toEqual([field]);
  });

  it('has no complaint about what is not filled in yet', () => {
    expect(readQuick(typed({ setpoint: '5' }))).toEqual({ answer: null, complaints: {} });
  });
});

function selected(rows: readonly (readonly Cell[])[], top = 2, left = 4): Selection {
  const bottom = top + rows.length - 1;
  return {
    sheet: 'Monitor',
    area: { top, left, bottom, right: left + (rows[0]?.length ?? 1) - 1 },
    cells: rows,
  };
}

function refusalOf(selection: Selection): string {
  const taken = takeThree(selection);
  return 'refusal' in taken ? taken.refusal : '';
}

describe('taking from the selection', () => {
  it('takes three cells of a row or of a column, with where they stand', () => {
    const row = takeThree(selected([[5, 200, 160]]));
    const column = takeThree(selected([[5], [200], [160]]));
    expect(
      'cells' in row && row.cells.map(({ field, value, place }) => [field, value, place.row, place.column]),
    ).toEqual([
      ['setpoint', 5, 2, 4],
      ['configured', 200, 2, 5],
      ['measured', 160, 2, 6],
    ]);
    expect('cells' in column && column.cells.map(({ place }) => [place.row, place.column])).toEqual([
      [2, 4],
      [3, 4],
      [4, 4],
    ]);
  });

  it('passes over empty cells between them', () => {
    const taken = takeThree(selected([[5, null, 200, ' ', 160]]));
    expect('cells' in taken && taken.cells.map(({ place }) => place.column)).toEqual([4, 6, 8]);
  });

  it('says how many there are where they are not three', () => {
    expect(refusalOf(selected([[5, 200]]))).toContain('2 filled cells');
    expect(refusalOf(selected([[null]]))).toContain('no filled cell');
    expect(refusalOf(selected([[5, 200, 160, 1]]))).toContain('4 filled');
  });

  it.each([['text'], [new ErrorCell('#N/A')], [new DateCell(20_000)], [true]])(
    'names a cell that is no number: %o',
    (cell) => {
      expect(refusalOf(selected([[5, cell, 160]]))).toContain('Monitor!E2');
    },
  );

  it('a field that is typed over is no longer that of its cell', () => {
    const taken = takeThree(selected([[5, 200, 160]]));
    const cells = 'cells' in taken ? taken.cells : [];
    const took = quickReducer(emptyQuick, { type: 'took', cells });
    expect(Object.keys(took.sources)).toEqual(['setpoint', 'configured', 'measured']);
    const changed = quickReducer(took, { type: 'typed', field: 'measured', text: '170' });
    expect(Object.keys(changed.sources)).toEqual(['setpoint', 'configured']);
    expect(changed.texts.measured).toBe('170');
    expect(took.texts.measured).toBe('160');
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
