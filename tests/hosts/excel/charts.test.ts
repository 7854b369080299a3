import { describe, expect, it } from 'vitest';
import { HostRefused } from '../../../src/hosts/port/port.ts';
import type { SheetModel } from '../../../src/sheets/model.ts';
import { FakeBook } from '../../office/fake/book.ts';
import type { FakeChart } from '../../office/fake/chart.ts';
import { HostError } from '../../office/fake/hostError.ts';
import {
  chartedSheets,
  deviationChart,
  recordSheet,
  thresholdChart,
  voltsChart,
} from '../file/write/chartedModel.ts';
import { sheetOf } from '../file/write/model.ts';
import { openInExcel } from './open.ts';

function station(): FakeBook {
  const book = new FakeBook();
  book.add('Channels', [['Tag'], ['31-VT-1X']]);
  return book;
}

async function written(models: readonly SheetModel[], book = station()) {
  const { excel, port } = openInExcel(book);
  await port.writeSheets(models);
  const charts = (sheet: string): readonly FakeChart[] => book.find(sheet)!.charts;
  return { book, excel, charts };
}

const column = (left: number, top: number, bottom: number) => ({ top, left, bottom, right: left });

describe('a chart in Excel', () => {
  it('draws its own series and none of those that Excel chose', async () => {
    const { charts } = await written(chartedSheets());
    const [volts, deviation] = charts('Record');
    expect(volts!.series.map(({ name, x, y }) => [name, x, y])).toEqual([
      ['measured', { sheet: 'Record', area: column(1, 2, 7) }, { sheet: 'Record', area: column(2, 2, 7) }],
      ['rated', { sheet: 'Record', area: column(1, 2, 7) }, { sheet: 'Record', area: column(3, 2, 7) }],
    ]);
    expect(deviation!.series.map(({ name }) => name)).toEqual(['deviation', 'upper limit', 'lower limit']);
    expect(volts!.series.map(({ set }) => [set.get('ChartType'), set.get('Smooth')])).toEqual([
      ['XYScatter', false],
      ['XYScatterLinesNoMarkers', false],
    ]);
    expect(deviation!.series[0]!.set.get('ChartType')).toBe('XYScatterLines');
  });

  it('draws from another sheet of the run under the name it got', async () => {
    const book = station();
    book.add("Pump's thresholds", [['of another time']]);
    const { charts } = await written(chartedSheets(), book);
    const [lying, standing] = charts('Hand-over');
    expect([lying!.type, standing!.type]).toEqual(['BarClustered', 'ColumnClustered']);
    const sheet = "Pump's thresholds (2)";
    for (const { series } of [lying!, standing!]) {
      expect(series.map(({ x, y }) => [x, y])).toEqual([
        [
          { sheet, area: column(1, 2, 5) },
          { sheet, area: column(2, 2, 5) },
        ],
        [
          { sheet, area: column(1, 2, 5) },
          { sheet, area: column(3, 2, 5) },
        ],
      ]);
    }
  });

  it('covers its cells, has its titles, leaves gaps and shows hidden rows', async () => {
    const { charts } = await written(chartedSheets());
    const [volts] = charts('Record');
    expect(volts!.place).toEqual(voltsChart.place);
    expect(Object.fromEntries(volts!.set)).toMatchObject({
      'Title.Text': voltsChart.title,
      'Axes.CategoryAxis.Title.Text': 'Gap, mm',
      'Axes.ValueAxis.Title.Text': 'Output, V',
      'Legend.Visible': true,
      DisplayBlanksAs: 'NotPlotted',
      PlotVisibleOnly: false,
    });
  });

  it('has axes that end where they should, its lines and its markers', async () => {
    const { charts } = await written(chartedSheets());
    const [, deviation] = charts('Record');
    expect(Object.fromEntries(deviation!.set)).toMatchObject({
      'Axes.CategoryAxis.Minimum': 0,
      'Axes.CategoryAxis.Maximum': 1.75,
      'Axes.CategoryAxis.NumberFormat': '0.00',
      'Axes.ValueAxis.Minimum': -50,
      'Axes.ValueAxis.Maximum': 50,
      'Axes.ValueAxis.TickLabelPosition': 'Low',
    });
    const [points, limit] = deviation!.series;
    expect(Object.fromEntries(points!.set)).toMatchObject({
      'Format.Line.Color': '#0072B2',
      'Format.Line.Weight': 1.5,
      'Format.Line.LineStyle': 'Continuous',
      MarkerStyle: 'Square',
      MarkerSize: 6,
      MarkerBackgroundColor: '#0072B2',
    });
    expect(Object.fromEntries(limit!.set)).toMatchObject({
      'Format.Line.LineStyle': 'Dot',
      MarkerStyle: 'None',
    });
  });

  it('has the first category at the top where bars lie, and fills that differ without colours', async () => {
    const { charts } = await written(chartedSheets());
    const [lying, standing] = charts('Hand-over');
    expect(lying!.set.get('Axes.CategoryAxis.ReversePlotOrder')).toBe(true);
    expect(lying!.set.get('Axes.CategoryAxis.Position')).toBe('Maximum');
    expect(standing!.set.get('Axes.CategoryAxis.ReversePlotOrder')).toBeUndefined();
    const brightness = lying!.series.map(({ set }) => luminance(String(set.get('Format.Fill'))));
    // WCAG 2.2, 1.4.11: shapes that must be told apart have a contrast of 3 to 1.
    const [brighter, darker] = [Math.max(...brightness), Math.min(...brightness)];
    expect((brighter + 0.05) / (darker + 0.05)).toBeGreaterThan(3);
  });

  it('without titles has none, and a single series no legend', async () => {
    const [first] = thresholdChart.series;
    const cells = { area: column(1, 1, 1) };
    const chart = {
      ...thresholdChart,
      title: '',
      categoryAxis: {},
      valueAxis: {},
      series: [{ ...first!, categories: cells, values: cells }],
    };
    const { charts } = await written([sheetOf('One', [[1]], { charts: [chart] })]);
    const [one] = charts('One');
    expect(one!.series).toHaveLength(1);
    expect(Object.fromEntries(one!.set)).toMatchObject({
      'Title.Visible': false,
      'Axes.CategoryAxis.Title.Visible': false,
      'Axes.ValueAxis.Title.Visible': false,
      'Legend.Visible': false,
    });
  });

  it('has titles and names that Excel takes, however long', async () => {
    const long = 'x'.repeat(300);
    const [, rated] = voltsChart.series;
    const chart = { ...voltsChart, title: long, series: [{ ...rated!, name: long }] };
    const { charts } = await written([{ ...recordSheet, charts: [chart] }]);
    const [one] = charts('Record');
    expect([one!.set.get('Title.Text'), one!.series[0]!.name]).toEqual(Array(2).fill(`${'x'.repeat(254)}…`));
  });
});

/** Relative luminance of `#RRGGBB` (WCAG 2.2, glossary). */
function luminance(color: string): number {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) => {
    const part = Number.parseInt(color.slice(at, at + 2), 16) / 255;
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

it('titles and names of series are never formulas', async () => {
  const [, rated] = voltsChart.series;
  const chart = {
    ...voltsChart,
    title: '=1+1',
    xAxis: { title: '=A1' },
    series: [{ ...rated!, name: '=31' }],
  };
  const { charts } = await written([{ ...recordSheet, charts: [chart] }]);
  const [one] = charts('Record');
  expect([
    one!.set.get('Title.Text'),
    one!.set.get('Axes.CategoryAxis.Title.Text'),
    one!.series[0]!.name,
  ]).toEqual([' =1+1', ' =A1', ' =31']);
});

describe('requests', () => {
  it('are three more for charts, none without', async () => {
    const { excel: charted } = await written([recordSheet]);
    const { excel } = await written([{ ...recordSheet, charts: [] }]);
    expect(charted.roundTrips.length - excel.roundTrips.length).toBe(3);
  });

  it('of hundreds of charts are few, and none larger than Excel takes', async () => {
    const charts = Array.from({ length: 400 }, (_, index) => ({
      ...deviationChart,
      place: { ...deviationChart.place, top: 10 + 20 * index, bottom: 27 + 20 * index },
    }));
    const { excel, book } = await written([{ ...recordSheet, charts }]);
    expect(book.find('Record')!.charts).toHaveLength(400);
    expect(book.find('Record')!.charts.every(({ series }) => series.length === 3)).toBe(true);
    const sizes = excel.roundTrips.map(({ requestBytes }) => requestBytes);
    expect(sizes.length).toBeLessThan(20);
    // 5 MB is what Excel on the web takes (public reference, limits).
    expect(Math.max(...sizes)).toBeLessThan(5_000_000);
    expect(excel.roundTrips.every(({ error }) => error === undefined)).toBe(true);
  });

  it.each(['GetCount', 'SetPosition', 'MarkerStyle'])(
    'that turn out too large are sent in parts, each chart once (the one with %s)',
    async (name) => {
      const { excel: counted } = await written([recordSheet]);
      const large = counted.roundTrips.findIndex(({ body }) =>
        body.Actions.some(({ Name }) => Name === name),
      );
      const book = station();
      const { excel, port } = openInExcel(book);
      excel.beforeAction = () => {
        if (excel.roundTrips.length === large) throw new HostError('RequestPayloadSizeLimitExceeded');
      };
      await port.writeSheets([recordSheet]);
      expect(excel.roundTrips.length).toBe(counted.roundTrips.length + 2);
      const charts = book.find('Record')!.charts;
      expect(charts.map(({ series }) => series.length)).toEqual([2, 3]);
      expect(charts.map(({ series }) => series[0]!.set.get('MarkerStyle'))).toEqual(['Circle', 'Square']);
    },
  );
});

describe('what Excel refuses', () => {
  it('at any step leaves the workbook as it was, but for looks and print layout', async () => {
    const counted = openInExcel(station());
    await counted.port.writeSheets([recordSheet]);
    const trips = counted.excel.roundTrips.map(({ body }) => body.Actions.length);
    const [before, looks] = [trips.slice(0, -2), trips.slice(-2)].map((part) =>
      part.reduce((a, b) => a + b, 0),
    );
    for (let failing = before! - 90; failing < before! + looks!; failing += 11) {
      const book = station();
      const { excel, port } = openInExcel(book);
      let step = 0;
      excel.beforeAction = () => {
        if (step++ === failing) throw new HostError('GeneralException');
      };
      const work = port.writeSheets([recordSheet]);
      if (failing < before!) {
        await expect(work, `step ${failing}`).rejects.toBeInstanceOf(HostRefused);
        expect(book.sheets.map(({ name }) => name)).toEqual(['Channels']);
      } else {
        await work;
        expect(book.find('Record')!.charts.map(({ series }) => series.length)).toEqual([2, 3]);
      }
    }
  });

  it('cancelled between charts and their looks, no sheet is left', async () => {
    const book = station();
    const { excel, port } = openInExcel(book);
    const cancel = { cancelled: false };
    excel.beforeAction = ({ Name }) => {
      if (Name === 'SetPosition') cancel.cancelled = true;
    };
    await expect(port.writeSheets([recordSheet], undefined, cancel)).rejects.toThrow(/cancelled/);
    expect(book.sheets.map(({ name }) => name)).toEqual(['Channels']);
  });

  it.each([
    [
      'cells of a sheet that is not written',
      { series: [{ ...voltsChart.series[1]!, x: { sheet: 'Lost', area: column(1, 2, 7) } }] },
      '"Lost"',
    ],
    ['an axis that ends before it begins', { xAxis: { min: 2, max: 1 } }, 'axis'],
  ])('a model that contradicts itself: %s', async (_, rest, message) => {
    const book = station();
    const { port } = openInExcel(book);
    const model = { ...recordSheet, charts: [{ ...voltsChart, ...rest }] };
    await expect(port.writeSheets([model])).rejects.toThrow(message);
    expect(book.sheets.map(({ name }) => name)).toEqual(['Channels']);
  });
});
