import type { JSX } from 'preact';
import type { AskedRow } from './askedRow.ts';
import { AskedLine } from './AskedLine.tsx';
import type { Asking } from './useAsking.ts';
import { askingWords } from './askingWords.ts';

interface AskedTableProps {
  readonly label: string;
  readonly rows: readonly AskedRow[];
  readonly asking: Asking;
}

/**
 * Meanings and other questions, a row each. The roles are said aloud, because a narrow pane lays the cells of a row below
 * each other, and a browser no longer takes that for a table.
 */
export function AskedTable({ label, rows, asking }: AskedTableProps): JSX.Element {
  const { columns } = askingWords;
  return (
    <div class="asked-box">
      <table class="asked" role="table" aria-label={label}>
        <thead role="rowgroup">
          <tr role="row">
            {[columns.meaning, columns.where, columns.values, columns.unit, columns.why, columns.change].map(
              (name) => (
                <th key={name} role="columnheader" scope="col">
                  {name}
                </th>
              ),
            )}
          </tr>
        </thead>
        <tbody role="rowgroup">
          {rows.map((row) => (
            <AskedLine key={row.id} row={row} asking={asking} />
          ))}
        </tbody>
      </table>
    </div>
  );
}
