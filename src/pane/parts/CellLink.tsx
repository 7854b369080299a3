import type { JSX, ComponentChildren } from 'preact';
import { columnNumber } from '../../cells/address.ts';
import { Said } from './Said.tsx';
import type { CellPlace } from '../../hosts/port/port.ts';
import { usePort } from '../app/paneContext.ts';
import { useAction } from './useLongAction.ts';

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
  const number = columnNumber(column);
  const known = !Number.isNaN(number);
  return (
    <CellButton place={{ sheet, row, column: known ? number : 1 }}>
      {!brief && (
        <>
          <Said text={sheet} most={40} />!
        </>
      )}
      {known ? column : 'A'}
      {row}
    </CellButton>
  );
}

/** A button that selects a cell of the workbook, and says beside it why it could not. */
export function CellButton({
  place,
  children,
}: {
  place: CellPlace;
  children: ComponentChildren;
}): JSX.Element {
  const port = usePort();
  const action = useAction();
  return (
    <>
      <button
        type="button"
        class="cell-link"
        onClick={() => {
          action.run(() => port.selectCell(place));
        }}
      >
        {children}
      </button>
      {action.refusal !== null && (
        <span class="field-complaint" role="alert">
          <Said text={action.refusal} />
        </span>
      )}
    </>
  );
}
