import type { Column } from './write.ts';

/** A fraction as a cell in percent. */
export function percent(fraction: number | null | undefined): number | null {
  return fraction === null || fraction === undefined ? null : Number((fraction * 100).toPrecision(6));
}

const current = { side: 'list', measure: 'current' } as const;
const shown = {
  side: 'list',
  measure: 'level',
  detection: (c: { detection: string }) => c.detection,
} as const;

/** Gain of the monitor, ends of a loop, what is shared with others, runout. */
export const chainColumns: readonly Column[] = [
  { header: 'Monitor gain', side: 'settings', value: (c) => c.cells.gain },
  {
    header: 'Monitor gain uncertainty',
    side: 'settings',
    measure: 'percent',
    value: (c) => percent(c.cells.gainUncertainty),
  },
  {
    header: 'Zero voltage uncertainty',
    side: 'list',
    measure: 'volts',
    value: (c) => c.cells.zeroUncertainty,
  },
  { header: 'Loop current at 0 %', ...current, value: (c) => c.cells.loop?.at0 ?? null },
  {
    header: 'Loop current at 0 % uncertainty',
    ...current,
    value: (c) => c.cells.loop?.at0Uncertainty ?? null,
  },
  { header: 'Loop current at 100 %', ...current, value: (c) => c.cells.loop?.at100 ?? null },
  {
    header: 'Loop current at 100 % uncertainty',
    ...current,
    value: (c) => c.cells.loop?.at100Uncertainty ?? null,
  },
  { header: 'Batch', side: 'list', value: (c) => (c.cells.batch === '' ? null : c.cells.batch) },
  {
    header: 'Shared uncertainty',
    side: 'list',
    measure: 'percent',
    value: (c) => percent(c.cells.sharedUncertainty),
  },
  { header: 'Chain length', side: 'list', measure: 'length', value: (c) => c.cells.chainLength },
  { header: 'Runout amplitude', ...shown, value: (c) => c.cells.slowRoll?.amplitude ?? null },
  { header: 'Runout phase', side: 'list', value: (c) => c.cells.slowRoll?.phase ?? null },
  {
    header: 'Runout sensitivity',
    side: 'list',
    measure: 'sensitivity',
    value: (c) => c.cells.slowRoll?.sensitivityThen ?? null,
  },
  { header: '1X amplitude', ...shown, value: (c) => c.cells.slowRoll?.now?.amplitude ?? null },
  { header: '1X phase', side: 'list', value: (c) => c.cells.slowRoll?.now?.phase ?? null },
];
