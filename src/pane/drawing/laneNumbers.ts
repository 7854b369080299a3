import { scaleNumber } from './drawingMessages.ts';
import { positionOf, type Lane, type Scene } from './scene.ts';
import { edges } from './sizes.ts';

/** A number below a mark of a lane, by the middle of its text. */
export interface LaneNumber {
  readonly of: 'intended' | 'effective';
  readonly x: number;
  readonly text: string;
}

/** Widest that a digit of the drawing is, in its own units. */
const digit = 6.6;
const gap = 6;

/**
 * The numbers of the marks of a lane, inside the drawing. Where both have no room side by side, each gives way to the other;
 * where both are the same, one says it.
 */
export function laneNumbers(scene: Scene, { intended, effective }: Lane): readonly LaneNumber[] {
  const number = (of: LaneNumber['of'], value: number): LaneNumber => {
    const text = scaleNumber(scene, value);
    return { of, text, x: inside(positionOf(scene, value, edges.left, edges.right), text) };
  };
  const numbers = [
    ...(intended === null ? [] : [number('intended', intended)]),
    ...(effective === null ? [] : [number('effective', effective)]),
  ].toSorted((one, other) => one.x - other.x);
  const [left, right] = numbers;
  if (!left || !right) return numbers;
  if (left.text === right.text) return numbers.filter(({ of }) => of === 'effective');
  const apart = half(left.text) + gap + half(right.text);
  if (right.x - left.x >= apart) return numbers;
  const first = Math.min((left.x + right.x - apart) / 2, inside(edges.right, right.text) - apart);
  const x = inside(first, left.text);
  return [
    { ...left, x },
    { ...right, x: x + apart },
  ];
}

function half(text: string): number {
  return (text.length * digit) / 2;
}

/** The nearest place at which all of a text is inside the drawing. */
function inside(x: number, text: string): number {
  return Math.min(edges.right - half(text), Math.max(edges.left + half(text), x));
}
