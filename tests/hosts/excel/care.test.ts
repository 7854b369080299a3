import { describe, expect, it } from 'vitest';
import { excelPort } from '../../../src/hosts/excel/excelPort.ts';
import { FakeBook } from '../../office/fake/book.ts';
import { ErrorValue, FormulaCell } from '../../office/fake/entry.ts';
import { openInExcel } from './open.ts';

const unknown = new ErrorValue('#NAME?');

/** A workbook with formulas of ours that work, show `#NAME?` or the stored name, and some that are not ours. */
function book(): FakeBook {
  const made = new FakeBook();
  made.add('Notes', [['no formulas here']]);
  made.add('Channels', [
    ['Tag', 'Works', 'Broken', 'Stored', 'Not ours'],
    [
      'A',
      new FormulaCell('=TRIPDRIFT.EFFECTIVE(5,200,160)', 6.25),
      new FormulaCell('=TRIPDRIFT.EFFECTIVE(5,200,160)', unknown),
      new FormulaCell('=1+_xldudf_TRIPDRIFT_SHIFT(5,200,"_xldudf_TRIPDRIFT_X")', 2.25),
      new FormulaCell('=NOSUCH(1)', unknown),
    ],
    [
      'B',
      null,
      new FormulaCell('=IF(A3="","",tripdrift.Shift(5,200,160))', unknown),
      null,
      new FormulaCell('="TRIPDRIFT.EFFECTIVE"&\'TRIPDRIFT.X\'!A1', unknown),
    ],
  ]);
  return made;
}

const broken = [
  { sheet: 'Channels', row: 2, column: 3 },
  { sheet: 'Channels', row: 2, column: 4 },
  { sheet: 'Channels', row: 3, column: 3 },
];

describe('formulas of ours', () => {
  it('that are broken are found, and no others', async () => {
    const { excel, port } = openInExcel(book());
    expect(await port.findBrokenFormulas()).toEqual(broken);
    const asked = excel.roundTrips.flatMap(({ body }) =>
      body.Actions.filter(({ QueryInfo }) => QueryInfo?.Select?.includes('formulas')),
    );
    expect(asked).toHaveLength(1);
  });

  it('are entered anew under the names that are typed', async () => {
    const made = book();
    const { port } = openInExcel(made);
    expect(await port.repairFormulas(await port.findBrokenFormulas())).toBe(3);
    expect(await port.findBrokenFormulas()).toEqual([]);
    const sheet = made.find('Channels')!;
    expect(sheet.content(2, 4)).toEqual(
      new FormulaCell('=1+TRIPDRIFT.SHIFT(5,200,"_xldudf_TRIPDRIFT_X")', 1),
    );
    expect(sheet.content(3, 3)).toEqual(new FormulaCell('=IF(A3="","",tripdrift.Shift(5,200,160))', 1));
    expect(sheet.content(2, 5)).toEqual(new FormulaCell('=NOSUCH(1)', unknown));
  });

  it('are left alone where a cell is no longer one of ours', async () => {
    const made = book();
    made.find('Channels')!.setContent(2, 3, 'typed since');
    const { port } = openInExcel(made);
    expect(await port.repairFormulas(broken)).toBe(2);
    expect(made.find('Channels')!.content(2, 3)).toBe('typed since');
  });

  it('are not touched on a protected sheet, which is named and stays protected', async () => {
    const made = book();
    const sheet = made.find('Channels')!;
    sheet.isProtected = true;
    const { port } = openInExcel(made);
    await expect(port.repairFormulas(broken)).rejects.toThrow(/Sheet “Channels” is protected/);
    expect([sheet.isProtected, sheet.content(2, 3)]).toEqual([
      true,
      new FormulaCell('=TRIPDRIFT.EFFECTIVE(5,200,160)', unknown),
    ]);
  });

  it('and a sheet that is gone is named', async () => {
    const { port } = openInExcel(book());
    await expect(port.repairFormulas([{ sheet: 'Lost', row: 1, column: 1 }])).rejects.toThrow(
      /“Lost” was renamed/,
    );
  });

  it('are calculated anew on their sheets alone', async () => {
    const made = book();
    const { port } = openInExcel(made);
    expect(await port.recalculate()).toBe(4);
    expect(made.sheets.map(({ calculations }) => calculations)).toEqual([0, 1]);
  });

  it('in a long column are repaired in two round trips and two to look', async () => {
    const made = new FakeBook();
    const sheet = made.add('Channels');
    for (let row = 1; row <= 5_000; row++)
      sheet.setContent(row, 1, new FormulaCell(`=TRIPDRIFT.LOOP(B${row},4)`, unknown));
    const { excel, port } = openInExcel(made);
    const places = await port.findBrokenFormulas();
    const before = excel.roundTrips.length;
    expect(await port.repairFormulas(places)).toBe(5_000);
    expect(excel.roundTrips.length - before).toBe(3);
  });
});

describe('whether the functions are registered', () => {
  it.each([
    ['a formula of ours has a result', book(), true],
    ['all formulas of ours are broken', Object.assign(book(), { functionsRegistered: false }), false],
    ['there is none', new FakeBook(), null],
  ])('%s', async (_, made, expected) => {
    if (made.find('Channels') && expected === false) made.find('Channels')!.setContent(2, 2, undefined);
    if (expected === null) made.add('Notes', [['a']]);
    expect(await openInExcel(made).port.functionsReady()).toBe(expected);
  });

  it('is known once Excel has called one', async () => {
    const { excel } = openInExcel(new FakeBook());
    const port = excelPort({ library: excel.library, functionWasCalled: () => true });
    expect(await port.functionsReady()).toBe(true);
    expect(excel.roundTrips).toHaveLength(0);
  });
});
