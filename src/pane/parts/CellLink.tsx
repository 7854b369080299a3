import type { JSX } from 'preact';
import { columnNumber } from '../../cells/address.ts';
import { CellButton } from './CellButton.tsx';
import { Said } from './Said.tsx';

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
