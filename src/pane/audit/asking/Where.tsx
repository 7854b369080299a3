import type { JSX } from 'preact';
import { cellAddress } from '../../../cells/address.ts';
import { usePort } from '../../app/paneContext.ts';
import { Said } from '../../parts/Said.tsx';
import { useDeed } from '../../parts/useDeed.ts';
import type { Choice } from './askedRow.ts';

/** Where a choice lies: sheet and header of its column, or what it says; a button that shows it in the workbook. */
export function Where({ choice }: { choice: Choice }): JSX.Element {
  const port = usePort();
  const deed = useDeed();
  const { field, place, label } = choice;
  if (!place) return <Said text={label} most={200} />;
  return (
    <>
      <button
        type="button"
        class="cell-link"
        onClick={() => {
          deed.run(() => port.pointAt(place));
        }}
      >
        {field ? (
          <>
            <Said text={field.sheet} most={40} />!{cellAddress(field.place.row, field.place.column)}
          </>
        ) : (
          <Said text={label} most={200} />
        )}
      </button>
      {field && (
        <b>
          {' '}
          <Said text={field.header} most={80} />
        </b>
      )}
      {deed.refusal !== null && (
        <span class="field-complaint" role="alert">
          <Said text={deed.refusal} />
        </span>
      )}
    </>
  );
}
