import type { JSX } from 'preact';
import { columnNumber } from '../../cells/address.ts';
import { usePort } from '../app/paneContext.ts';
import { Said } from './Said.tsx';
import { useDeed } from './useDeed.ts';

interface CellLinkProps {
  readonly sheet: string;
  readonly row: number;
  /** Letters of the column; where it is none, the row's first cell is meant. */
  readonly column: string;
  /** The sheet is not shown: it stands nearby. */
  readonly brief?: boolean;
}

/** A cell's address as a button that selects it in the workbook. */
export function CellLink({ sheet, row, column, brief = false }: CellLinkProps): JSX.Element {
  const port = usePort();
  const deed = useDeed();
  const number = columnNumber(column);
  const letters = Number.isNaN(number) ? 'A' : column;
  return (
    <>
      <button
        type="button"
        class="cell-link"
        onClick={() => {
          deed.run(() => port.selectCell({ sheet, row, column: Number.isNaN(number) ? 1 : number }));
        }}
      >
        {!brief && (
          <>
            <Said text={sheet} most={40} />!
          </>
        )}
        {letters}
        {row}
      </button>
      {deed.refusal !== null && (
        <span class="field-complaint" role="alert">
          <Said text={deed.refusal} />
        </span>
      )}
    </>
  );
}
