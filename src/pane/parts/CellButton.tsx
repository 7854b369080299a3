import type { ComponentChildren, JSX } from 'preact';
import type { CellPlace } from '../../hosts/port/port.ts';
import { usePort } from '../app/paneContext.ts';
import { Said } from './Said.tsx';
import { useDeed } from './useDeed.ts';

/** A button that selects a cell of the workbook, and says beside it why it could not. */
export function CellButton({
  place,
  children,
}: {
  place: CellPlace;
  children: ComponentChildren;
}): JSX.Element {
  const port = usePort();
  const deed = useDeed();
  return (
    <>
      <button
        type="button"
        class="cell-link"
        onClick={() => {
          deed.run(() => port.selectCell(place));
        }}
      >
        {children}
      </button>
      {deed.refusal !== null && (
        <span class="field-complaint" role="alert">
          <Said text={deed.refusal} />
        </span>
      )}
    </>
  );
}
