import type { FakeChart, FakeSeries, FakeSource } from './chart.ts';
import { areaOf } from './address.ts';
import { invalidArgument } from './hostError.ts';
import { type HostObject, isHostObject } from './hostObject.ts';
import { type Check, color, lineChecks, measure, oneOf, settableOf, text, truth } from './settable.ts';

export const chartTypes = [
  'XYScatter',
  'XYScatterLines',
  'XYScatterLinesNoMarkers',
  'BarClustered',
  'ColumnClustered',
];
const markers = ['None', 'Circle', 'Square', 'Diamond', 'Triangle', 'X', 'Plus', 'Star', 'Dot', 'Dash'];
/** Sizes of markers in points (common practice of spreadsheet programs, no source). */
const markerSizes = { least: 2, most: 72 };

/** Excel makes series of the cells it is given as it sees fit: here one, and a second where they are more than one. */
export function ownSeries(source: FakeSource): FakeSeries[] {
  const one = (name: string): FakeSeries => ({ name, x: null, y: source, set: new Map() });
  const { top, left, bottom, right } = source.area;
  return top === bottom && left === right ? [one('Series1')] : [one('Series1'), one('Series2')];
}

export function seriesCollection(chart: FakeChart, write: () => void): HostObject {
  const all = (): HostObject[] => chart.series.map((series) => seriesObject(chart, series, write));
  return {
    items: all,
    methods: {
      GetCount: () => chart.series.length,
      GetItemAt: (index) => {
        const series = all()[Number(index)];
        if (!series) throw invalidArgument();
        return series;
      },
      Add: (name) => {
        write();
        const series: FakeSeries = { name: text(name ?? ''), x: null, y: null, set: new Map() };
        chart.series.push(series);
        return seriesObject(chart, series, write);
      },
    },
  };
}

function seriesObject(chart: FakeChart, series: FakeSeries, write: () => void): HostObject {
  const settable = settableOf(series.set, write);
  const isScatter = chart.type.startsWith('XYScatter');
  const only = (allowed: boolean, check: Check): Check => {
    return (value) => {
      if (!allowed) throw invalidArgument();
      return check(value);
    };
  };
  return {
    set: settable('', {
      ChartType: oneOf(chartTypes),
      Smooth: only(isScatter, truth),
      MarkerStyle: only(isScatter, oneOf(markers)),
      MarkerSize: only(isScatter, measure(markerSizes.least, markerSizes.most)),
      MarkerBackgroundColor: only(isScatter, color),
      MarkerForegroundColor: only(isScatter, color),
      GapWidth: only(!isScatter, measure(0, 500)),
    }),
    parts: {
      Format: () => ({
        parts: {
          Line: () => ({ set: settable('Format.Line', lineChecks) }),
          Fill: () => ({
            methods: {
              SetSolidColor: (value) => {
                write();
                series.set.set('Format.Fill', color(value));
              },
            },
          }),
        },
      }),
    },
    methods: {
      SetXAxisValues: (range) => {
        write();
        series.x = sourceOf(range);
      },
      SetValues: (range) => {
        write();
        series.y = sourceOf(range);
      },
      Delete: () => {
        write();
        chart.series.splice(chart.series.indexOf(series), 1);
      },
    },
  };
}

/** A range names its sheet in its address. */
export function sourceOf(range: unknown): FakeSource {
  if (!isHostObject(range)) throw invalidArgument();
  const address = String(range.get?.['Address']?.());
  return { sheet: address.slice(0, address.lastIndexOf('!')), area: areaOf(range) };
}
