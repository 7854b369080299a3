import type { Area } from '../../../src/cells/sheet.ts';
import { areaAt, areaOf } from './address.ts';
import type { FakeChart } from './chart.ts';
import { axisObject, titleObject } from './chartAxisObject.ts';
import { chartTypes, ownSeries, seriesCollection, sourceOf } from './chartSeriesObject.ts';
import { invalidArgument, itemNotFound } from './hostError.ts';
import type { HostObject } from './hostObject.ts';
import { oneOf, settableOf, truth } from './settable.ts';
import type { FakeSheet } from './sheet.ts';

/** The charts of a sheet. `write` is called before anything is changed. */
export function chartsObject(sheet: FakeSheet, write: () => void): HostObject {
  const object = (chart: FakeChart): HostObject => chartObject(sheet, chart, write);
  return {
    items: () => sheet.charts.map(object),
    item: (key) => {
      const chart = sheet.charts.find(({ id }) => id === key);
      if (!chart) throw itemNotFound();
      return object(chart);
    },
    methods: {
      Add: (type, source) => {
        write();
        const chart: FakeChart = {
          id: `${sheet.id}chart${sheet.charts.length + 1}`,
          type: oneOf(chartTypes)(type),
          series: ownSeries(sourceOf(source)),
          place: null,
          set: new Map(),
        };
        sheet.charts.push(chart);
        return object(chart);
      },
    },
  };
}

function chartObject(sheet: FakeSheet, chart: FakeChart, write: () => void): HostObject {
  const settable = settableOf(chart.set, write);
  return {
    id: chart.id,
    get: { Id: () => chart.id },
    set: settable('', {
      DisplayBlanksAs: oneOf(['NotPlotted', 'Zero', 'Interplotted']),
      PlotVisibleOnly: truth,
    }),
    parts: {
      Series: () => seriesCollection(chart, write),
      Title: () => titleObject('Title', chart.set, settable),
      Legend: () => ({
        set: settable('Legend', { Visible: truth, Position: oneOf(['Bottom', 'Right', 'Top', 'Left']) }),
      }),
      Axes: () => ({
        parts: {
          CategoryAxis: () => axisObject('Axes.CategoryAxis', chart, settable),
          ValueAxis: () => axisObject('Axes.ValueAxis', chart, settable),
        },
      }),
    },
    methods: {
      SetPosition: (start, end) => {
        write();
        const first = cellsOf(start);
        const last = cellsOf(end);
        chart.place = { ...first, bottom: last.bottom, right: last.right };
        if (last.bottom < first.top || last.right < first.left) throw invalidArgument();
      },
      Delete: () => {
        write();
        sheet.charts.splice(sheet.charts.indexOf(chart), 1);
      },
    },
  };
}

function cellsOf(cells: unknown): Area {
  return typeof cells === 'string' ? areaAt(cells) : areaOf(cells);
}
