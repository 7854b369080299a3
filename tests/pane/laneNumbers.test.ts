import { describe, expect, it } from 'vitest';
import { laneNumbers } from '../../src/pane/drawing/laneNumbers.ts';
import { sceneOf, type Lane } from '../../src/pane/drawing/scene.ts';
import { edges } from '../../src/pane/drawing/sizes.ts';

const lane: Lane = {
  name: 'danger',
  acts: 'trips',
  intended: 5,
  effective: 6.25,
  low: null,
  high: null,
  verdict: 'late',
};
const numbersOf = (change: Partial<Lane>, step: number | null = null) => {
  const drawn = { ...lane, ...change };
  return laneNumbers(
    sceneOf({ unit: 'mil', step, lanes: [drawn], limit: null, reach: null, reading: null })!,
    drawn,
  );
};
/** Where a number begins and ends, by digits that are six units wide. */
const span = ({ x, text }: ReturnType<typeof numbersOf>[number]): [number, number] => [
  x - 3 * text.length,
  x + 3 * text.length,
];

describe('numbers beside the marks of a drawing', () => {
  it('stand below their marks, at the step of the instrument', () => {
    expect(numbersOf({}, 0.1).map(({ of, text }) => [of, text])).toEqual([
      ['intended', '5'],
      ['effective', '6.25'],
    ]);
    expect(numbersOf({ effective: 6.2468 }, 0.1)[1]?.text).toBe('6.25');
  });

  it.each([
    [5, 5.02],
    [5.02, 5],
    [125, 126.5],
    [-25, -25.4],
    [0.001, 25],
    [-0.5, -25],
  ])('never cover each other or leave the drawing, set %d and acting at %d', (intended, effective) => {
    const [one, other] = numbersOf({ intended, effective }).map(span);
    expect(one![1]).toBeLessThanOrEqual(other![0]);
    for (const [from, to] of [one!, other!]) {
      expect(from).toBeGreaterThanOrEqual(edges.left - 1);
      expect(to).toBeLessThanOrEqual(edges.right + 1);
    }
  });

  it('are one where both are the same', () => {
    expect(numbersOf({ effective: 5 }).map(({ text }) => text)).toEqual(['5']);
  });

  it('are none for a mark that is not drawn', () => {
    expect(numbersOf({ effective: null }).map(({ of }) => of)).toEqual(['intended']);
  });
});
