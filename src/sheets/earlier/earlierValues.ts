import { thresholdNames, type ThresholdName } from '../../audit/model/threshold.ts';
import { amountIn, word } from '../../audit/since/fromReport.ts';
import { type Quantity, quantityNames } from '../../audit/model/quantities.ts';
import type { SnapshotThreshold, Value } from '../../audit/model/snapshot.ts';
import type { ResultCells } from './resultCells.ts';

/** The column of a sheet of results in which each quantity stands; those left out it does not show. */
const columnOf: Readonly<Partial<Record<Quantity, string>>> = {
  ...Object.fromEntries(thresholdNames.map((name) => [name, 'setpoint'])),
  'configured sensitivity': 'configured',
  'measured sensitivity': 'measured',
  'set-point multiplier': 'multiplier',
  'full scale': 'fullScale',
  limit: 'limit',
  resolution: 'resolution',
  detection: 'detection',
  kind: 'kind',
  'configured zero voltage': 'zeroConfigured',
  'measured zero voltage': 'zeroMeasured',
  'positive direction': 'sign',
  bypass: 'inBypass',
};

/** Quantities that the sheet does not show. */
export function unknownQuantities(cells: ResultCells): Quantity[] {
  return quantityNames.filter((name) => !cells.has(columnOf[name] ?? ''));
}

/** Settings and readings of a channel as its first line and its thresholds show them. */
export function earlierValues(
  cells: ResultCells,
  row: number,
  thresholds: readonly SnapshotThreshold[],
): Partial<Record<Quantity, Value | null>> {
  const unit = cells.text(row, 'unit') || null;
  const detection = cells.text(row, 'detection') || null;
  const level = (id: string) => amountIn(cells.number(row, id), unit, detection);
  const sensitivity = (id: string) =>
    amountIn(cells.number(row, id), cells.text(row, 'sensitivityUnit') || null);
  const setpoint = (name: ThresholdName) => {
    const own = thresholds.find((one) => one.name === name && one.multiplier === 1);
    return amountIn(own?.setpoint ?? null, unit, detection);
  };
  const sign = cells.number(row, 'sign');
  const worked = thresholds.some(({ verdict }) => verdict !== 'incomplete');
  return {
    ...Object.fromEntries(thresholdNames.map((name) => [name, setpoint(name)])),
    'configured sensitivity': sensitivity('configured'),
    'measured sensitivity': sensitivity('measured'),
    'set-point multiplier': worked
      ? amountIn(Math.max(1, ...thresholds.map(({ multiplier }) => multiplier)), '')
      : null,
    'full scale': level('fullScale'),
    limit: level('limit'),
    resolution: level('resolution'),
    detection: word(detection),
    kind: word(cells.text(row, 'kind')),
    'configured zero voltage': amountIn(cells.number(row, 'zeroConfigured'), 'V'),
    'measured zero voltage': amountIn(cells.number(row, 'zeroMeasured'), 'V'),
    'positive direction': word(sign === null ? null : sign > 0 ? 'toward' : 'away'),
    bypass: bypassIn(cells, row),
  };
}

/** Whether a channel was in bypass; `null` where no settings were joined with it, or the sheet does not say. */
function bypassIn(cells: ResultCells, row: number): Value | null {
  const text = cells.text(row, 'inBypass');
  return cells.text(row, 'settingsSheet') !== '' && (text === 'yes' || text === 'no') ? word(text) : null;
}
