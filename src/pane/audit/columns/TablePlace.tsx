import type { ColumnMap } from '../../../audit/model/columnMap.ts';
import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import type { TableKind } from '../../../audit/read/tables/vocabulary.ts';
import { ChoiceField } from '../../parts/ChoiceField.tsx';
import { shownText } from '../../parts/shownText.ts';
import { TextField } from '../../parts/TextField.tsx';
import { withPlace } from './corrections.ts';
import { columnWords } from './columnWords.ts';

interface TablePlaceProps {
  readonly kind: TableKind;
  readonly sheetNames: readonly string[];
  readonly map: ColumnMap;
  readonly onMap: (map: ColumnMap) => void;
}

const lastRow = 1_048_576;

/** Where a table's headers stand, if not where they were found. */
export function TablePlace({ kind, sheetNames, map, onMap }: TablePlaceProps): JSX.Element {
  const said = map[kind];
  const [sheet, setSheet] = useState(said?.sheet ?? '');
  const [row, setRow] = useState(said?.headerRow === undefined ? '' : String(said.headerRow));
  const number = row.trim() === '' ? null : Number(row);
  const wrong = number !== null && !(Number.isInteger(number) && number >= 1 && number <= lastRow);
  return (
    <details>
      <summary>{columnWords.place}</summary>
      <ChoiceField
        label={columnWords.sheet}
        value={sheet}
        choices={[
          { value: '', text: columnWords.anySheet },
          ...sheetNames.map((name) => ({ value: name, text: shownText(name, 40) })),
        ]}
        onChoice={setSheet}
      />
      <TextField
        label={columnWords.headerRow}
        value={row}
        numeric
        hint={columnWords.headerRowHint}
        complaint={wrong ? columnWords.headerRowWrong : undefined}
        onText={setRow}
      />
      <button
        type="button"
        class="button"
        disabled={wrong}
        onClick={() => {
          onMap(withPlace(map, kind, sheet === '' ? null : sheet, number));
        }}
      >
        {columnWords.apply}
      </button>
    </details>
  );
}
