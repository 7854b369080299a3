import { describe, expect, it } from 'vitest';
import { audit } from '../../../src/audit/audit.ts';
import { HostRefused } from '../../../src/hosts/port/port.ts';
import { handoverSheets } from '../../../src/sheets/handover/handoverSheets.ts';
import type { SheetModel } from '../../../src/sheets/model.ts';
import { FakeBook } from '../../office/fake/book.ts';
import { FormulaCell } from '../../office/fake/entry.ts';
import { HostError } from '../../office/fake/hostError.ts';
import { sheetOf } from '../file/write/model.ts';
import { plant } from '../../sheets/plant.ts';
import { workbookOf } from '../../sheets/tables.ts';
import { openInExcel } from './open.ts';

function station(): FakeBook {
  const book = new FakeBook();
  book.add('Channels', [['Tag'], ['31-VT-1X']]);
  return book;
}

const results: SheetModel = {
  name: 'Audit results',
  widths: [10, 10, 12.5],
  styles: {
    header: { bold: true, fill: 'E3E8EB', underline: true, wrap: true, align: 'center', valign: 'center' },
    level: { numberFormat: '0.000_0', valign: 'top' },
    date: { numberFormat: 'yyyy-mm-dd' },
  },
  formulas: ['B{r}*2', '{Audit summary}!$C$5&"{x}"'],
  rowCount: 3,
  *rows() {
    yield { height: 30, cells: ['Tag', 'Level', 'Date'].map((value) => ({ value, style: 'header' })) };
    yield {
      cells: [
        { value: 'P-1' },
        { value: 1.5, style: 'level' },
        { value: 46_082, style: 'date' },
        { value: 3, formula: 0, style: 'level' },
        { value: 3, formula: 0 },
      ],
    };
    yield { cells: [undefined, { value: Infinity }, { value: null }, { value: 'x', formula: 1 }] };
  },
  freeze: { rows: 1, columns: 1 },
  filter: { top: 1, left: 1, bottom: 3, right: 3 },
  merges: [{ top: 3, left: 1, bottom: 3, right: 2 }],
  shades: [
    { area: { top: 2, left: 1, bottom: 3, right: 1 }, equals: 'late', style: { fill: 'E69F00', bold: true } },
    { area: { top: 2, left: 1, bottom: 3, right: 1 }, equals: 'a "b"', style: { color: '000000' } },
  ],
  print: {
    landscape: true,
    repeatRows: { from: 1, to: 1 },
    footer: 'Pumps & fans',
    area: { top: 1, left: 1, bottom: 4, right: 3 },
  },
};

const summary = sheetOf('Audit summary', [['a']]);

describe('a result sheet in Excel', () => {
  const write = async (book = station()) => {
    const { excel, port } = openInExcel(book);
    await port.writeSheets([results, summary]);
    return { excel, sheet: book.find('Audit results')! };
  };

  it('has formulas of its own rows and of other result sheets under the names they got', async () => {
    const book = station();
    book.add('Audit summary', [['of another time']]);
    const { sheet } = await write(book);
    expect(sheet.content(2, 4)).toMatchObject({ formula: '=B2*2' });
    expect(sheet.content(3, 4)).toMatchObject({ formula: `='Audit summary (2)'!$C$5&"{x}"` });
  });

  it('has values in full precision, and texts for numbers that a cell can’t hold', async () => {
    const { sheet } = await write();
    expect([sheet.content(2, 2), sheet.content(2, 3), sheet.content(3, 2), sheet.content(3, 3)]).toEqual([
      1.5,
      46_082,
      '∞',
      undefined,
    ]);
  });

  it('counts days from 1904 where the workbook does', async () => {
    const book = station();
    book.date1904 = true;
    const { sheet } = await write(book);
    // 1,462 days between the systems (ECMA-376 part 1, section 18.17.4.1).
    expect([sheet.content(2, 2), sheet.content(2, 3)]).toEqual([1.5, 46_082 - 1_462]);
  });

  it('has its looks', async () => {
    const { sheet } = await write();
    const look = (row: number, column: number, ...properties: string[]) =>
      properties.map((property) => sheet.painted(row, column, property));
    expect(
      look(1, 3, 'Font.Bold', 'Fill.Color', 'WrapText', 'HorizontalAlignment', 'VerticalAlignment'),
    ).toEqual([true, '#E3E8EB', true, 'Center', 'Center']);
    expect(look(1, 2, 'EdgeBottom.Style', 'RowHeight')).toEqual(['Continuous', 30]);
    expect(look(2, 2, 'VerticalAlignment', 'Font.Bold', 'EdgeBottom.Style')).toEqual([
      'Top',
      undefined,
      undefined,
    ]);
    const formats = [
      [2, 2],
      [2, 3],
      [2, 4],
      [2, 5],
      [3, 4],
    ] as const;
    expect(formats.map(([row, column]) => sheet.format(row, column))).toEqual([
      '0.000_0',
      'yyyy-mm-dd',
      '0.000_0',
      'General',
      'General',
    ]);
    // 10 digits of 7 pixels and 5 of padding are 75 pixels (ECMA-376 part 1, section 18.3.1.13), at 96 to the inch 56.25 points.
    expect(look(9, 2, 'ColumnWidth')).toEqual([56.25]);
    expect(look(9, 3, 'ColumnWidth')).toEqual([(12.5 * 7 + 5) * 0.75]);
  });

  it('has its frame, shades and print layout', async () => {
    const { sheet } = await write();
    expect(sheet.frozen).toEqual({ top: 1, left: 1, bottom: 1, right: 1 });
    expect(sheet.filter).toEqual(results.filter);
    expect(sheet.merges).toEqual(results.merges);
    expect(
      sheet.rules.map(({ rule, stopIfTrue, format }) => [rule, stopIfTrue, Object.fromEntries(format)]),
    ).toEqual([
      [{ formula1: '="late"', operator: 'EqualTo' }, true, { 'Fill.Color': '#E69F00', 'Font.Bold': true }],
      [{ formula1: '="a ""b"""', operator: 'EqualTo' }, true, { 'Font.Color': '#000000' }],
    ]);
    expect(Object.fromEntries(sheet.page)).toMatchObject({
      Orientation: 'Landscape',
      Zoom: { horizontalFitToPages: 1 },
      SetPrintTitleRows: '$1:$1',
      SetPrintArea: 'A1:C4',
      LeftFooter: 'Pumps && fans',
      RightFooter: 'Page &P of &N',
    });
  });

  it('is calculated once it stands where Excel calculates only when asked', async () => {
    const book = station();
    book.calculationMode = 'Manual';
    const { sheet } = await write(book);
    expect(sheet.calculations).toBe(1);
    expect(book.find('Channels')?.calculations).toBe(0);
  });

  it('does not calculate or flicker while it is written', async () => {
    const { excel } = await write();
    const writing = excel.roundTrips.filter(({ body }) =>
      body.Actions.some(({ Name }) => Name === 'Formulas'),
    );
    expect(writing).toHaveLength(1);
    expect(excel.suspensions.filter((what) => what === 'calculation')).toHaveLength(writing.length);
    expect(excel.suspensions.filter((what) => what === 'screen')).toHaveLength(1);
  });

  it('stays without its print layout where there is no printer', async () => {
    const book = station();
    const { excel, port } = openInExcel(book);
    excel.beforeAction = ({ Name }) => {
      if (Name === 'Orientation') throw new HostError('GeneralException');
    };
    await port.writeSheets([results, summary]);
    expect(book.sheets.map(({ name }) => name)).toEqual(['Channels', 'Audit results', 'Audit summary']);
  });
});

it('a formula has the format of its style, not the one of the cell it leads to', async () => {
  const book = station();
  const percent = sheetOf('Policy', [[{ value: 0.07, style: 'percent' }]], {
    styles: { percent: { numberFormat: '0.0%' } },
  });
  const formulas = sheetOf('Formulas', [[{ value: 0.07, formula: 0 }]], { formulas: ['{Policy}!$A$1'] });
  await openInExcel(book).port.writeSheets([percent, formulas]);
  expect(book.find('Policy')!.format(1, 1)).toBe('0.0%');
  expect(book.find('Formulas')!.content(1, 1)).toMatchObject({ formula: "='Policy'!$A$1" });
  expect(book.find('Formulas')!.format(1, 1)).toBe('General');
});

describe('all or none', () => {
  const contents = (book: FakeBook) => book.sheets.map((sheet) => [sheet.name, sheet.content(1, 1)]);

  it('whichever step Excel refuses', async () => {
    const counted = openInExcel(station());
    await counted.port.writeSheets([results, summary]);
    // The last round trip is print layout, which may be refused.
    const steps = counted.excel.roundTrips.slice(0, -1).flatMap(({ body }) => body.Actions).length;
    expect(steps).toBeGreaterThan(100);

    for (let failing = 0; failing < steps; failing++) {
      const book = station();
      const { excel, port } = openInExcel(book);
      let step = 0;
      excel.beforeAction = () => {
        if (step++ === failing) throw new HostError('GeneralException');
      };
      await expect(port.writeSheets([results, summary]), `step ${failing}`).rejects.toBeInstanceOf(
        HostRefused,
      );
      expect(contents(book), `step ${failing}`).toEqual([['Channels', 'Tag']]);
    }
  });

  it('cancelled half way', async () => {
    const book = station();
    const { port } = openInExcel(book);
    const long = sheetOf(
      'Long',
      Array.from({ length: 3_000 }, (_, row) => [`${row} ${'x'.repeat(2_000)}`]),
    );
    const cancel = { cancelled: false };
    const parts: number[] = [];
    const work = port.writeSheets(
      [summary, long],
      (part) => {
        parts.push(part);
        cancel.cancelled = true;
      },
      cancel,
    );
    await expect(work).rejects.toThrow(/cancelled/);
    expect(parts.at(-1)).toBeLessThan(1);
    expect(contents(book)).toEqual([['Channels', 'Tag']]);
  });

  it('what can’t be taken away again is named', async () => {
    const { excel, port } = openInExcel(station());
    excel.beforeAction = ({ Name }) => {
      if (Name === 'Merge' || Name === 'Delete') throw new HostError('GeneralException');
    };
    await expect(port.writeSheets([results, summary])).rejects.toThrow(
      /Delete the sheets “Audit results”, “Audit summary”/,
    );
  });

  it('a sheet of the user’s that appears under the same name stays', async () => {
    const book = station();
    const { excel, port } = openInExcel(book);
    excel.beforeAction = ({ Name, ActionType }) => {
      // A colleague adds a sheet just before the second one of ours.
      if (ActionType === 1 && book.find('Audit results') && !book.find('Audit summary'))
        book.add('Audit summary', [['mine']]);
      if (Name === 'Merge') throw new HostError('GeneralException');
    };
    await expect(port.writeSheets([results, summary])).rejects.toBeInstanceOf(HostRefused);
    expect(contents(book)).toEqual([
      ['Channels', 'Tag'],
      ['Audit summary', 'mine'],
    ]);
  });
});

describe('names', () => {
  it('a chart sheet’s name is taken, though Excel does not list it', async () => {
    const book = station();
    book.chartSheets.push('Audit results');
    const written = await openInExcel(book).port.writeSheets([results, summary]);
    expect(written.map(({ given }) => given)).toEqual(['Audit results (2)', 'Audit summary (2)']);
    expect(book.sheets).toHaveLength(3);
  });

  it('a protected structure is refused before anything is tried, and never unprotected', async () => {
    const book = station();
    book.structureProtected = true;
    const { excel, port } = openInExcel(book);
    await expect(port.writeSheets([results, summary])).rejects.toThrow(/structure is protected.*Review tab/);
    expect(excel.roundTrips).toHaveLength(1);
    expect(book.structureProtected).toBe(true);
  });
});

it('many areas of one look are named in parts that Excel takes', async () => {
  const book = station();
  const rows = Array.from({ length: 4_000 }, (_, row) => [
    { value: row, style: row % 2 === 0 ? 'strong' : 'plain' },
  ]);
  const styles = { strong: { bold: true, underline: true }, plain: {} };
  await openInExcel(book).port.writeSheets([sheetOf('Striped', rows, { styles })]);
  const sheet = book.find('Striped')!;
  const bold = (row: number) => [
    sheet.painted(row, 1, 'Font.Bold'),
    sheet.painted(row, 1, 'EdgeBottom.Style'),
  ];
  expect([bold(1), bold(2), bold(3_999), bold(4_000)]).toEqual([
    [true, 'Continuous'],
    [undefined, undefined],
    [true, 'Continuous'],
    [undefined, undefined],
  ]);
});

it('a text longer than a request is sent in parts', async () => {
  const book = station();
  const texts = Array.from({ length: 300 }, (_, row) => [`${row}${'"'.repeat(30_000)}`]);
  await openInExcel(book).port.writeSheets([sheetOf('Texts', texts)]);
  const sheet = book.find('Texts')!;
  expect(texts.every(([text], row) => sheet.content(row + 1, 1) === text)).toBe(true);
  expect(sheet.content(1, 1)).not.toBeInstanceOf(FormulaCell);
});

describe('hand-over sheets in Excel', () => {
  it('are written as they are, with their charts, on the paper asked for', async () => {
    const report = audit(workbookOf(plant), { now: new Date('2025-03-14T08:05:00Z') });
    const models = handoverSheets(report).map((model) => ({
      ...model,
      print: { ...model.print, paper: 'A4' as const },
    }));
    const book = station();
    const { port } = openInExcel(book);
    const written = await port.writeSheets(models);
    expect(written.map(({ given }) => given)).toEqual(models.map(({ name }) => name));
    const [, page, annex] = models;
    const sheet = book.find(annex!.name)!;
    expect([sheet.page.get('Orientation'), sheet.page.get('PaperSize')]).toEqual(['Portrait', 'A4']);
    expect(sheet.page.get('SetPrintArea')).toBe(`A1:L${annex!.rowCount}`);
    expect(sheet.page.get('Zoom')).toEqual({ horizontalFitToPages: 1 });
    expect(sheet.charts.length).toBeGreaterThan(0);
    expect(sheet.charts.map(({ set }) => set.get('Legend.Visible'))).toEqual(annex!.charts!.map(() => false));
    expect(book.find(page!.name)!.page.get('Zoom')).toEqual({
      horizontalFitToPages: 1,
      verticalFitToPages: 1,
    });
  });
});
