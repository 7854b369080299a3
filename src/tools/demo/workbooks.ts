import { harbourStation } from './harbourStation.ts';
import { template } from '../template/template.ts';

/** The workbooks that come with the project, by the name of their file. */
export const workbooks: Readonly<Record<string, () => Uint8Array>> = {
  'harbour-station.xlsx': harbourStation,
  'template.xlsx': () => template(),
  'template-metric.xlsx': () => template('µm'),
};
