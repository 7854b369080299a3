import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { usePort } from '../app/paneContext.ts';
import { Notice } from '../parts/Notice.tsx';
import { Said } from '../parts/Said.tsx';
import { useDeed } from '../parts/useDeed.ts';
import { careWords } from './careWords.ts';

/** Calculates every Tripdrift formula of the workbook anew. */
export function Recalculate(): JSX.Element {
  const port = usePort();
  const deed = useDeed();
  const [count, setCount] = useState<number | null>(null);
  return (
    <div class="deed">
      <button
        type="button"
        class="button"
        onClick={() => {
          setCount(null);
          deed.run(async () => {
            setCount(await port.recalculate());
          });
        }}
      >
        {careWords.recalculate}
      </button>
      {deed.refusal !== null && (
        <Notice tone="problem">
          <Said text={deed.refusal} />
        </Notice>
      )}
      {count !== null && <Notice tone="done">{careWords.recalculated(count)}</Notice>}
    </div>
  );
}
