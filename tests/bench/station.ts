import type { ModelCell, SheetModel } from '../../src/sheets/model.ts';

/** A small repeatable source of numbers from 0 to 1 (Lehmer's generator, 2^31 − 1). */
function numbers(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
}

type Value = string | number | null;

function sheet(
  name: string,
  headers: readonly string[],
  count: number,
  row: (index: number) => Value[],
): SheetModel {
  const cells = (values: readonly Value[]): { cells: (ModelCell | undefined)[] } => ({
    cells: values.map((value) => (value === null ? undefined : { value })),
  });
  return {
    name,
    widths: headers.map(() => 14),
    styles: {},
    formulas: [],
    rowCount: count + 1,
    *rows() {
      yield cells(headers);
      for (let index = 0; index < count; index++) yield cells(row(index));
    },
    print: { landscape: true },
  };
}

/** A measured sensitivity of an invented station: most chains within a few percent of 200 mV/mil, one in eight well off. */
function sensitivity(random: () => number): number {
  const off = random() < 0.125 ? 1 + 0.5 * (random() - 0.5) : 1;
  return Math.round(1000 * 200 * off * (1 + 0.05 * (random() - 0.5))) / 1000;
}

/** The sheets of an invented station of `count` channels: 20 columns of channels, 16 of settings, in another order. */
export function stationSheets(count: number): SheetModel[] {
  const random = numbers(20_251_125);
  const tag = (index: number) => `V-${String(index).padStart(6, '0')}`;
  const headers = [
    [
      'Tag',
      'Machine',
      'Location',
      'Kind',
      'Measured sensitivity (mV/mil)',
      'Uncertainty (%)',
      'Gap voltage (V)',
    ],
    [
      'Reference sensitivity (mV/mil)',
      'Reference gap voltage (V)',
      'Measured zero voltage (V)',
      'Positive direction',
    ],
    [
      'Speed (r/min)',
      'Limit (mil)',
      'Present reading (mil)',
      'Growth per day (mil/day)',
      'Calibrated on',
      'Last good on',
    ],
    ['Remarks', 'Checked by', 'Loop drawing'],
  ].flat();
  const channels = sheet('Channels', headers, count, (index) => {
    const axial = index % 10 === 9;
    return [
      tag(index),
      `Unit ${Math.floor(index / 20)}`,
      `Bearing ${(index % 4) + 1}`,
      axial ? 'axial' : 'radial',
      sensitivity(random),
      random() < 0.8 ? 1 + Math.round(20 * random()) / 10 : null,
      Math.round(100 * (-9.6 - 0.8 * random())) / 100,
      200,
      -10,
      axial ? Math.round(100 * (-9.97 - 0.06 * random())) / 100 : null,
      axial ? (random() < 0.5 ? 'toward' : 'away') : null,
      3600,
      axial ? 40 : 8,
      axial ? 3 : Math.round(100 * (1 + 2 * random())) / 100,
      random() < 0.1 ? 0.02 : null,
      '2025-06-01',
      '2024-06-01',
      index % 7 === 0 ? 'cable replaced at the last outage' : null,
      `crew ${index % 9}`,
      `D-${1000 + (index % 400)}`,
    ];
  });
  const settingsHeaders = [
    [
      'Rack',
      'Slot',
      'Tag',
      'Danger (mil)',
      'Alert (mil)',
      'Full scale (mil)',
      'Configured sensitivity (mV/mil)',
    ],
    [
      'Alert delay (s)',
      'Danger delay (s)',
      'Set-point multiplier',
      'Configured zero voltage (V)',
      'Resolution (mil)',
    ],
    ['Voting group', 'Voting', 'Bypass', 'Remarks'],
  ].flat();
  const settings = sheet('Monitor', settingsHeaders, count, (position) => {
    const index = count - 1 - position;
    const axial = index % 10 === 9;
    return [
      Math.floor(index / 64),
      index % 64,
      tag(index),
      axial ? 25 : 5,
      axial ? 20 : 3.5,
      axial ? 40 : 10,
      200,
      3,
      1,
      index % 25 === 3 ? 2 : null,
      axial ? -10 : null,
      0.1,
      axial ? null : `G${Math.floor(index / 2)}`,
      axial ? null : '1oo2',
      index % 500 === 4 ? 'yes' : 'no',
      null,
    ];
  });
  return [channels, settings];
}
