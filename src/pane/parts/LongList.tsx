import type { ComponentChildren, JSX } from 'preact';
import { useState } from 'preact/hooks';

/** Entries that a list shows at first, and more of them each time it is asked. */
export const atOnce = 50;

interface LongListProps<Entry> {
  readonly entries: readonly Entry[];
  /** How many of them are shown before more are asked for. */
  readonly first?: number;
  /** What the button says that shows so many more. */
  readonly more: (count: number) => string;
  readonly line: (entry: Entry, index: number) => ComponentChildren;
}

/** A list of findings or the like; a long one shows its next part when asked. */
export function LongList<Entry>({ entries, first = atOnce, more, line }: LongListProps<Entry>): JSX.Element {
  const [most, setMost] = useState(first);
  const rest = entries.length - most;
  return (
    <>
      <ul class="findings">{entries.slice(0, most).map(line)}</ul>
      {rest > 0 && (
        <button
          type="button"
          class="button"
          onClick={() => {
            setMost(most + atOnce);
          }}
        >
          {more(Math.min(rest, atOnce))}
        </button>
      )}
    </>
  );
}
