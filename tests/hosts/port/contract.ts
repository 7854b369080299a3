import { describe, expect, it } from 'vitest';
import { DateCell, ErrorCell, PercentCell } from '../../../src/cells/cell.ts';
import type { Area, Sheet, Workbook } from '../../../src/cells/sheet.ts';
import { type CellPlace, HostRefused, type WorkbookPort } from '../../../src/hosts/port/port.ts';
import { chartedSheets, readings } from '../file/write/chartedModel.ts';
import { sheetOf } from '../file/write/model.ts';
import { hostileTexts } from './hostileTexts.ts';

/** A port on a workbook, and what the user of that workbook does. */
interface OpenedWorkbook {
  readonly port: WorkbookPort;
  readonly select: (sheet: string, area: Area) => void | Promise<void>;
  /** Types something into a cell. */
  readonly type: (place: CellPlace, text: string) => void | Promise<void>;
}

/** Opens a workbook with these contents in the host. */
export type OpenWorkbook = (workbook: Workbook) => OpenedWorkbook | Promise<OpenedWorkbook>;

function sheet(name: string, rows: Sheet['rows'], rest: Partial<Sheet> = {}): Sheet {
  return { name, hidden: false, rows, hiddenRows: new Set(), tables: [], ...rest };
}

const channels = sheet(
  'Channels',
  [
    ['Tag', 'Measured (mV/mil)', 'Uncertainty', 'Calibrated', 'In use', 'Check'],
    ['31-VT-1X', 160.125, new PercentCell(3), new DateCell(20_513), true, new ErrorCell('#N/A')],
    ['31-VT-1Y', null, new PercentCell(2.5), new DateCell(20_513.25), false],
    [],
    [null, 7.123456789012345],
  ],
  {
    hiddenRows: new Set([3]),
    hiddenColumns: new Set([3, 5]),
    tables: [
      {
        name: 'Calibrations',
        area: { top: 1, left: 1, bottom: 3, right: 6 },
        headerRow: true,
        totalsRow: false,
      },
    ],
  },
);

const station: Workbook = {
  name: 'Harbour.xlsx',
  sheets: [
    channels,
    sheet('Old list', [['kept for the record']], { hidden: true }),
    sheet('Below', [[], [], [null, null, 'far']]),
  ],
};

/** What every host of workbooks keeps to, whichever program it is; `hostileTexts` come back exactly as they went in. */
export function workbookPortContract(host: string, open: OpenWorkbook): void {
  const refusal = async (work: Promise<unknown>): Promise<string> => {
    const error: unknown = await work.then(
      () => undefined,
      (reason: unknown) => reason,
    );
    expect(error).toBeInstanceOf(HostRefused);
    return (error as HostRefused).message;
  };

  describe(`${host} keeps to the contract of hosts`, () => {
    it('reads what stands in the workbook', async () => {
      const { port } = await open(station);
      const heard: number[] = [];
      expect(await port.readWorkbook((part) => heard.push(part))).toEqual(station);
      expect(heard.at(-1)).toBe(1);
      expect(heard).toEqual(heard.toSorted((one, other) => one - other));
    });

    it('leaves out sheets that hold nothing', async () => {
      const { port } = await open({ ...station, sheets: [sheet('Empty', []), channels] });
      expect((await port.readWorkbook()).sheets.map(({ name }) => name)).toEqual(['Channels']);
    });

    it('stops reading when cancelled', async () => {
      const { port } = await open(station);
      expect(await refusal(port.readWorkbook(undefined, { cancelled: true }))).toContain('cancelled');
    });

    it('reads the selected cells', async () => {
      const { port, select } = await open(station);
      const area = { top: 2, left: 2, bottom: 3, right: 3 };
      await select('Channels', area);
      expect(await port.readSelection()).toEqual({
        sheet: 'Channels',
        area,
        cells: [
          [160.125, new PercentCell(3)],
          [null, new PercentCell(2.5)],
        ],
      });
    });

    it('hands over no more than 1,000 cells of a large selection', async () => {
      const { port, select } = await open(station);
      const area = { top: 1, left: 1, bottom: 1_048_576, right: 6 };
      await select('Channels', area);
      const selection = await port.readSelection();
      expect(selection.area).toEqual(area);
      expect(selection.cells.flat().length).toBeLessThanOrEqual(1_000);
      expect(selection.cells[1]?.[0]).toBe('31-VT-1X');
    });

    it('selects a row and a cell', async () => {
      const { port } = await open(station);
      await port.selectRow('Channels', 3, 1, 6);
      expect((await port.readSelection()).area).toEqual({ top: 3, left: 1, bottom: 3, right: 6 });
      await port.selectCell({ sheet: 'Below', row: 3, column: 3 });
      expect(await port.readSelection()).toMatchObject({ sheet: 'Below', cells: [['far']] });
    });

    it('points at an area of a sheet and away from it, and changes nothing', async () => {
      const { port } = await open(station);
      await port.pointAt({ sheet: 'Channels', area: { top: 1, left: 2, bottom: 5, right: 2 } });
      await port.pointAt({ sheet: 'Below', area: { top: 3, left: 3, bottom: 3, right: 3 } });
      expect((await port.readSelection()).sheet).toBe('Below');
      await port.pointAt(null);
      expect(await port.readWorkbook()).toEqual(station);
    });

    it('tells what the user selects, until it is asked to stop', async () => {
      const { port, select } = await open(station);
      const heard: unknown[] = [];
      const stop = await port.onSelect((place) => heard.push(place));
      const area = { top: 2, left: 3, bottom: 4, right: 3 };
      await select('Channels', area);
      await expect.poll(() => heard.at(-1)).toEqual({ sheet: 'Channels', area });
      await select('Below', area);
      await expect.poll(() => heard.at(-1)).toEqual({ sheet: 'Below', area });
      stop();
      const before = heard.length;
      await select('Channels', { ...area, left: 1 });
      await port.readSelection();
      expect(heard).toHaveLength(before);
    });

    it('says which sheet is hidden or gone', async () => {
      const { port } = await open(station);
      expect(
        await refusal(port.pointAt({ sheet: 'Old list', area: { top: 1, left: 1, bottom: 9, right: 1 } })),
      ).toMatch(/Old list.*hidden/);
      expect(await refusal(port.selectCell({ sheet: 'Old list', row: 1, column: 1 }))).toMatch(
        /Old list.*hidden/,
      );
      expect(await refusal(port.selectCell({ sheet: 'Lost', row: 1, column: 1 }))).toMatch(
        /Lost.*renamed or deleted/,
      );
    });

    it('inserts a formula into an empty cell, and into a filled one only if told to', async () => {
      const { port, select } = await open(station);
      await select('Channels', { top: 3, left: 2, bottom: 5, right: 4 });
      expect(await port.insertFormula('1+2')).toEqual({ sheet: 'Channels', row: 3, column: 2 });
      await select('Channels', { top: 2, left: 1, bottom: 2, right: 1 });
      expect(await refusal(port.insertFormula('=1+2'))).toMatch(/A2 on sheet “Channels” is filled/);
      expect((await port.readWorkbook()).sheets[0]?.rows[1]?.[0]).toBe('31-VT-1X');
      expect(await port.insertFormula('=1+2', true)).toEqual({ sheet: 'Channels', row: 2, column: 1 });
      expect((await port.readWorkbook()).sheets[0]?.rows[1]?.[0]).not.toBe('31-VT-1X');
    });

    it('adds sheets behind the others, under free names', async () => {
      const { port } = await open(station);
      const wanted = [sheetOf('channels', [['new']]), sheetOf('Results', [['a', 1.5, true]])];
      const heard: number[] = [];
      expect(await port.writeSheets(wanted, (part) => heard.push(part))).toEqual([
        { wanted: 'channels', given: 'channels (2)' },
        { wanted: 'Results', given: 'Results' },
      ]);
      expect(heard.at(-1)).toBe(1);
      const { sheets } = await port.readWorkbook();
      expect(sheets.slice(0, 3)).toEqual(station.sheets);
      expect(sheets.slice(3).map(({ name, rows }) => [name, rows])).toEqual([
        ['channels (2)', [['new']]],
        ['Results', [['a', 1.5, true]]],
      ]);
    });

    it('shows the sheet in front, and keeps tables and links of result sheets', async () => {
      const { port } = await open(station);
      const area = { top: 1, left: 1, bottom: 2, right: 1 };
      const list = (name: string) =>
        sheetOf(name, [['Tag'], ['P-1']], { table: { name: 'TripdriftList', area }, inFront: true });
      await port.writeSheets([sheetOf('Before', [['a']]), list('List'), sheetOf('After', [['a']])]);
      expect((await port.readSelection()).sheet).toBe('List');
      await port.writeSheets([list('Another')]);
      const names = (await port.readWorkbook()).sheets.flatMap(({ tables }) =>
        tables.map(({ name }) => name),
      );
      expect(names).toEqual(['Calibrations', 'TripdriftList', 'TripdriftList2']);
    });

    it('tells what refers to sheets, and removes them, but not all that can be seen', async () => {
      const { port, type } = await open(station);
      const table = { name: 'TripdriftList', area: { top: 1, left: 1, bottom: 2, right: 1 } };
      await port.writeSheets([sheetOf("Crew's list", [['Tag'], ['P-1']], { table })]);
      await type({ sheet: 'Below', row: 1, column: 1 }, "='Crew''s list'!A2");
      await type({ sheet: 'Below', row: 2, column: 2 }, '=1+1');
      expect(await port.referencesTo(["Crew's list"])).toEqual([{ sheet: 'Below', row: 1, column: 1 }]);
      await port.removeSheets(["Crew's list", 'never there']);
      const left = (await port.readWorkbook()).sheets.map(({ name }) => name);
      expect(left).toEqual(['Channels', 'Old list', 'Below']);
      expect(await refusal(port.removeSheets(['Channels', 'Below']))).toContain('no other sheet');
      expect((await port.readWorkbook()).sheets).toHaveLength(3);
    });

    it('puts sheets in the place of others, under their names, or leaves those as they are', async () => {
      const { port } = await open(station);
      const area = { top: 1, left: 1, bottom: 2, right: 1 };
      const table = { name: 'TripdriftList', area };
      const list = (row: string) => sheetOf('List', [['Tag'], [row]], { table, inFront: true });
      await port.writeSheets([list('old'), sheetOf('Rest', [['old']])]);
      const before = await port.readWorkbook();
      const going = ['List', 'Rest', 'never there'];
      await refusal(port.replaceSheets(going, [list('new')], undefined, { cancelled: true }));
      expect(await port.readWorkbook()).toEqual(before);
      expect(await port.replaceSheets(going, [list('new')])).toEqual([{ wanted: 'List', given: 'List' }]);
      const { sheets } = await port.readWorkbook();
      expect(sheets.slice(0, 3)).toEqual(station.sheets);
      expect(sheets.slice(3)).toMatchObject([
        { name: 'List', rows: [['Tag'], ['new']], tables: [{ name: 'TripdriftList', area }] },
      ]);
      expect((await port.readSelection()).sheet).toBe('List');
    });

    it('writes texts as texts, exactly', async () => {
      const { port } = await open(station);
      await port.writeSheets([
        sheetOf(
          'Texts',
          hostileTexts.map((text) => [text]),
        ),
      ]);
      const { sheets } = await port.readWorkbook();
      expect(sheets.at(-1)?.rows.map((row) => row[0])).toEqual(hostileTexts);
    });

    it('writes sheets that have charts', async () => {
      const { port } = await open(station);
      expect((await port.writeSheets(chartedSheets())).map(({ given }) => given)).toEqual([
        'Record',
        'Hand-over',
        "Pump's thresholds",
      ]);
      const record = (await port.readWorkbook()).sheets.find(({ name }) => name === 'Record');
      expect(record?.rows.slice(1)).toEqual(readings.map((row) => row.map((value) => value ?? null)));
    });

    it('writes dates and percentages as what they are', async () => {
      const { port } = await open(station);
      const styles = { date: { numberFormat: 'yyyy-mm-dd' }, percent: { numberFormat: '0.0%' } };
      const row = [
        { value: 46_082, style: 'date' },
        { value: 0.07, style: 'percent' },
      ];
      await port.writeSheets([sheetOf('Formats', [row], { styles })]);
      // 46,082 is 1 March 2026 in the 1900 date system (ECMA-376 part 1, section 18.17.4.1).
      const day = Date.UTC(2026, 2, 1) / 86_400_000;
      expect((await port.readWorkbook()).sheets.at(-1)?.rows).toEqual([
        [new DateCell(day), new PercentCell(7)],
      ]);
    });

    it.each([
      ['cancelled before it begins', sheetOf('Ready', [['a']]), { cancelled: true }, HostRefused],
      [
        'the model breaks off',
        sheetOf('Broken', [['a'], ['b']], { rowCount: 3 }),
        { cancelled: false },
        Error,
      ],
    ])('leaves the workbook as it was when %s', async (_, model, cancel, kind) => {
      const { port } = await open(station);
      const work = port.writeSheets([sheetOf('First', [['a']]), model], undefined, cancel);
      await expect(work).rejects.toBeInstanceOf(kind);
      expect(await port.readWorkbook()).toEqual(station);
      expect(await port.writeSheets([sheetOf('First', [['a']])])).toEqual([
        { wanted: 'First', given: 'First' },
      ]);
    });

    it('keeps a setting in the workbook, and lets go of it', async () => {
      const { port } = await open(station);
      const value = { version: 1, columns: { Tag: 'tag', '“É=1': null }, limits: [0.1, 1e-30], yes: true };
      expect(await port.readSetting('map')).toBeNull();
      await port.writeSetting('map', value);
      await port.writeSetting('other', 'text');
      expect(await port.readSetting('map')).toEqual(value);
      expect(await port.readSetting('other')).toBe('text');
      await port.writeSetting('map', null);
      expect(await port.readSetting('map')).toBeNull();
    });

    it('tells of changes until it is stopped, but not of its own sheets', async () => {
      const { port, type } = await open(station);
      const heard: string[] = [];
      const stop = await port.onChange((name) => heard.push(name));
      await port.writeSheets([sheetOf('Results', [['a']])]);
      await type({ sheet: 'Below', row: 1, column: 1 }, 'changed');
      await expect.poll(() => heard).toEqual(['Below']);
      stop();
      await type({ sheet: 'Below', row: 1, column: 1 }, 'again');
      await new Promise((resolve) => setTimeout(resolve, 50));
      expect(heard).toEqual(['Below']);
    });
  });
}
