import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { columnLetters } from '../../cells/address.ts';
import type { CellPlace } from '../../hosts/port/port.ts';
import { usePort } from '../app/paneContext.ts';
import { CellLink } from '../parts/CellLink.tsx';
import { Notice } from '../parts/Notice.tsx';
import { Said } from '../parts/Said.tsx';
import { useDeed } from '../parts/useDeed.ts';
import { careWords } from './careWords.ts';

const shownAtMost = 100;

/** Finds cells whose Tripdrift formula lost its function, lists them, and repairs them when asked. */
export function BrokenFormulas(): JSX.Element {
  const port = usePort();
  const deed = useDeed();
  const [found, setFound] = useState<readonly CellPlace[] | null>(null);
  const [repaired, setRepaired] = useState<number | null>(null);
  return (
    <div class="deed">
      <p class="quiet">{careWords.brokenIntro}</p>
      <button
        type="button"
        class="button"
        onClick={() => {
          setRepaired(null);
          deed.run(async () => {
            setFound(await port.findBrokenFormulas());
          });
        }}
      >
        {careWords.find}
      </button>
      {deed.refusal !== null && (
        <Notice tone="problem">
          <Said text={deed.refusal} />
        </Notice>
      )}
      {repaired !== null && <Notice tone="done">{careWords.repaired(repaired)}</Notice>}
      {found !== null && (
        <p role="status">{found.length === 0 ? careWords.none : careWords.found(found.length)}</p>
      )}
      {found !== null && found.length > 0 && (
        <>
          <ul class="plain-list">
            {found.slice(0, shownAtMost).map(({ sheet, row, column }) => (
              <li key={`${row} ${column} ${sheet}`}>
                <CellLink sheet={sheet} row={row} column={columnLetters(column)} />
              </li>
            ))}
          </ul>
          {found.length > shownAtMost && <p class="quiet">{careWords.more(found.length - shownAtMost)}</p>}
          <button
            type="button"
            class="button button-first"
            onClick={() => {
              deed.run(async () => {
                setRepaired(await port.repairFormulas(found));
                setFound(await port.findBrokenFormulas());
              });
            }}
          >
            {careWords.repair(found.length)}
          </button>
        </>
      )}
    </div>
  );
}
