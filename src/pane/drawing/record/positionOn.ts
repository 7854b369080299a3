import type { PanelAxis } from './recordScene.ts';

/** Where a value stands between the two ends of a drawn scale; a value off the scale stands at the nearer end. */
export function positionOn({ from, to }: PanelAxis, value: number, start: number, end: number): number {
  const part = Math.min(1, Math.max(0, (value - from) / (to - from)));
  return start + part * (end - start);
}
