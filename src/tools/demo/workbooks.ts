import { harbourStation } from './harbourStation.ts';
import { trendExport } from './sheets/trendSheet.ts';
import { nightBefore } from './station/lastNight.ts';
import { template } from '../template/template.ts';

/** The workbooks that come with the project, by the name of their file. */
export const workbooks: Readonly<Record<string, () => Uint8Array>> = {
  'harbour-station.xlsx': harbourStation,
  'template.xlsx': () => template(),
  'template-metric.xlsx': () => template('µm'),
};

/** Exports of recorded readings that go with them. */
export const trends: Readonly<Record<string, () => Uint8Array>> = {
  'harbour-station-trend.csv': () => trendExport(nightBefore),
};
