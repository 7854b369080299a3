import type { ColumnMap } from '../../../audit/model/columnMap.ts';
import type { JSX } from 'preact';
import { Fold } from '../../parts/Fold.tsx';
import { saysSomething, withoutCorrections } from './corrections.ts';
import { columnWords } from './columnWords.ts';
import { TableColumns } from './TableColumns.tsx';
import type { Understood } from './understood.ts';

interface ColumnsPartProps {
  readonly understood: Understood;
  readonly sheetNames: readonly string[];
  readonly map: ColumnMap;
  readonly onMap: (map: ColumnMap) => void;
}

/** How both tables were understood, and what the user can say about it. Open by itself while a table is not clear. */
export function ColumnsPart({ understood, sheetNames, map, onMap }: ColumnsPartProps): JSX.Element {
  const corrected = saysSomething(map);
  return (
    <Fold part title={columnWords.title} needed={understood.refusal !== null}>
      <p class="quiet">{columnWords.intro}</p>
      {(['channels', 'settings'] as const).map((kind) => (
        <TableColumns
          key={kind}
          kind={kind}
          table={understood[kind]}
          sheetNames={sheetNames}
          map={map}
          onMap={onMap}
        />
      ))}
      {corrected && (
        <button
          type="button"
          class="button"
          onClick={() => {
            onMap(withoutCorrections(map));
          }}
        >
          {columnWords.reset}
        </button>
      )}
    </Fold>
  );
}
