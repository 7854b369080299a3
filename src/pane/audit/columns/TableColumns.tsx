import type { ColumnMap } from '../../../audit/model/columnMap.ts';
import type { JSX } from 'preact';
import type { TableKind } from '../../../audit/read/tables/vocabulary.ts';
import { Fold } from '../../parts/Fold.tsx';
import { Notice } from '../../parts/Notice.tsx';
import { Said } from '../../parts/Said.tsx';
import { tableNames } from '../auditWords.ts';
import { ColumnLine } from './ColumnLine.tsx';
import { columnWords } from './columnWords.ts';
import { TablePlace } from './TablePlace.tsx';
import type { TableUnderstood } from './understood.ts';

interface TableColumnsProps {
  readonly kind: TableKind;
  readonly table: TableUnderstood | null;
  readonly sheetNames: readonly string[];
  readonly map: ColumnMap;
  readonly onMap: (map: ColumnMap) => void;
}

/** The columns of one table: those with a meaning first, the rest folded away unless a meaning is still needed. */
export function TableColumns({ kind, table, sheetNames, map, onMap }: TableColumnsProps): JSX.Element {
  const place = <TablePlace kind={kind} sheetNames={sheetNames} map={map} onMap={onMap} />;
  if (!table) {
    return (
      <section>
        <h3>{tableNames[kind]}</h3>
        <Notice tone="warning">{columnWords.none}</Notice>
        {place}
      </section>
    );
  }
  const used = table.columns.filter((column) => column.meaning !== null);
  const rest = table.columns.filter((column) => column.meaning === null);
  const lines = (columns: typeof rest): JSX.Element => (
    <ul class="columns">
      {columns.map((column) => (
        <ColumnLine key={column.letters} table={table} column={column} map={map} onMap={onMap} />
      ))}
    </ul>
  );
  return (
    <section>
      <h3>{tableNames[kind]}</h3>
      <p class="quiet">
        <Said text={columnWords.at(table.sheet, table.headerRow)} />
      </p>
      {table.missing.length > 0 && <Notice tone="warning">{columnWords.missing(table.missing)}</Notice>}
      {table.clashes.length > 0 && <Notice tone="warning">{columnWords.clash(table.clashes)}</Notice>}
      {lines(used)}
      {rest.length > 0 && (
        <Fold
          title={columnWords.rest(rest.length)}
          needed={table.missing.length > 0 || table.clashes.length > 0}
        >
          {lines(rest)}
        </Fold>
      )}
      {place}
    </section>
  );
}
