import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { usePort } from '../app/paneContext.ts';
import { Notice } from '../parts/Notice.tsx';
import { Said } from '../parts/Said.tsx';
import { useDeed } from '../parts/useDeed.ts';
import { takeThree } from './fromSelection.ts';
import type { QuickAction } from './quickState.ts';
import { quickWords } from './quickWords.ts';

/** Takes the three numbers from the cells that are selected in the workbook, and says which it took. */
export function TakeFromSelection({ dispatch }: { dispatch: (action: QuickAction) => void }): JSX.Element {
  const port = usePort();
  const deed = useDeed();
  const [taken, setTaken] = useState(false);
  const [refusal, setRefusal] = useState<string | null>(null);
  const take = async (): Promise<void> => {
    setTaken(false);
    setRefusal(null);
    const result = takeThree(await port.readSelection());
    if ('refusal' in result) {
      setRefusal(result.refusal);
      return;
    }
    setTaken(true);
    dispatch({ type: 'took', cells: result.cells });
  };
  const problem = deed.refusal ?? refusal;
  return (
    <div class="deed">
      <button
        type="button"
        class="button"
        onClick={() => {
          deed.run(take);
        }}
      >
        {quickWords.take}
      </button>
      <span class="quiet">{quickWords.takeHint}</span>
      {problem !== null && (
        <Notice tone="problem">
          <Said text={problem} />
        </Notice>
      )}
      {taken && <Notice tone="done">{quickWords.took}</Notice>}
    </div>
  );
}
