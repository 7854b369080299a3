import { tones } from '../style/palette.ts';
import { verdictMarks } from '../style/verdictMarks.ts';
import type { ScatterSeries } from './model.ts';

/** Where on a sheet the curves of one channel stand. Rows and columns count from 1. */
interface RealAndShown {
  readonly first: number;
  readonly last: number;
  /** Columns by their ids: what the curves run along, and their heights. */
  readonly columnOf: (id: 'x' | 'real' | 'shown' | 'set') => number;
  readonly setName: string;
  /** Names and rows of the points where it should act and where it does; `null` where there is none. */
  readonly should: readonly [name: string, row: number] | null;
  readonly acts: readonly [name: string, row: number] | null;
}

/** What is really there and what is shown, with the setpoint, where it should act and where it does. */
export function realAndShown({
  first,
  last,
  columnOf,
  setName,
  should,
  acts,
}: RealAndShown): readonly ScatterSeries[] {
  const cells = (id: 'x' | 'real' | 'shown' | 'set', top = first, bottom = last) => ({
    area: { top, bottom, left: columnOf(id), right: columnOf(id) },
  });
  const x = cells('x');
  const mark = (
    [name, row]: readonly [string, number],
    marker: NonNullable<ScatterSeries['marker']>,
  ): ScatterSeries => ({ name, x: cells('x', row, row), y: cells('set', row, row), marker });
  const real = verdictMarks.late.light;
  return [
    { name: 'really', x, y: cells('real'), line: { color: real, width: 2 } },
    { name: 'shown', x, y: cells('shown'), line: { color: tones.quiet, width: 2, dash: 'dash' } },
    { name: setName, x, y: cells('set'), line: { color: tones.ink, width: 1, dash: 'dot' } },
    ...(should ? [mark(should, { shape: 'triangle', size: 11, color: real })] : []),
    ...(acts ? [mark(acts, { shape: 'diamond', size: 11, color: tones.quiet })] : []),
  ];
}
