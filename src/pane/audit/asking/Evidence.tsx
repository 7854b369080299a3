import type { JSX } from 'preact';
import { Said } from '../../parts/Said.tsx';
import { askingWords } from './askingWords.ts';

/** Lines that are shown at once. */
const first = 2;

/** What speaks for something, a line each; where there are many, the rest is folded away. */
export function Evidence({ lines }: { lines: readonly string[] }): JSX.Element {
  const rest = lines.slice(first);
  return (
    <>
      {listOf(lines.slice(0, first))}
      {rest.length > 0 && (
        <details>
          <summary>{askingWords.moreEvidence(rest.length)}</summary>
          {listOf(rest)}
        </details>
      )}
    </>
  );
}

function listOf(lines: readonly string[]): JSX.Element {
  return (
    <ul class="asked-evidence">
      {lines.map((line) => (
        <li key={line}>
          <Said text={line} most={200} />
        </li>
      ))}
    </ul>
  );
}
