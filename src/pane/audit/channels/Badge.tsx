import type { JSX } from 'preact';
import { signOf, standingClass, standingWords, type Standing } from './standing.ts';

/** How a channel or threshold stands as a word with a sign, so that its colour says nothing by itself. */
export function Badge({ standing }: { standing: Standing }): JSX.Element {
  return (
    <span class={`badge ${standingClass(standing)}`}>
      <span aria-hidden="true">{signOf(standing)}</span> {standingWords[standing]}
    </span>
  );
}
