import type { ColumnMap } from '../../../audit/model/columnMap.ts';
import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { columnsOf, type TableKind } from '../../../audit/read/tables/vocabulary.ts';
import { parseUnit } from '../../../units/parse.ts';
import { CellLink } from '../../parts/CellLink.tsx';
import { ChoiceField } from '../../parts/ChoiceField.tsx';
import { Said } from '../../parts/Said.tsx';
import { TextField } from '../../parts/TextField.tsx';
import { withMeaning, withUnit } from './corrections.ts';
import { columnWords } from './columnWords.ts';
import type { ColumnUnderstood, TableUnderstood } from './understood.ts';

interface ColumnLineProps {
  readonly table: TableUnderstood;
  readonly column: ColumnUnderstood;
  readonly map: ColumnMap;
  readonly onMap: (map: ColumnMap) => void;
}

/** One column: its letters and header, what it means, and its unit. */
export function ColumnLine({ table, column, map, onMap }: ColumnLineProps): JSX.Element {
  const { letters, header, meaning, takesUnit, unit } = column;
  return (
    <li>
      <span class="column-head">
        <CellLink sheet={table.sheet} row={table.headerRow} column={letters} brief />{' '}
        <Said text={header} most={80} />
      </span>
      <span class="column-fields">
        <ChoiceField
          label={columnWords.meaningOf(letters)}
          labelHidden
          value={meaning ?? ''}
          choices={[
            { value: '', text: columnWords.notUsed },
            ...namesFor(table.kind).map((name) => ({ value: name, text: name })),
          ]}
          onChoice={(chosen) => {
            onMap(withMeaning(map, table, column, chosen === '' ? null : chosen));
          }}
        />
        {meaning !== null && takesUnit && (
          <UnitField
            key={`${meaning} ${unit ?? ''}`}
            letters={letters}
            unit={unit ?? ''}
            onUnit={(text) => {
              onMap(withUnit(map, table.kind, meaning, text));
            }}
          />
        )}
      </span>
    </li>
  );
}

/** What a column of a table can mean: quantities of its own first, then those that usually stand in the other table. */
function namesFor(kind: TableKind): readonly string[] {
  const kinds = [kind, kind === 'channels' ? 'settings' : 'channels'] as const;
  return [...new Set(kinds.flatMap((one) => Object.values(columnsOf(one)).map(({ name }) => name)))];
}

interface UnitFieldProps {
  readonly letters: string;
  readonly unit: string;
  readonly onUnit: (text: string) => void;
}

function UnitField({ letters, unit, onUnit }: UnitFieldProps): JSX.Element {
  const [text, setText] = useState(unit);
  const unknown = text.trim() !== '' && text !== unit && parseUnit(text) === undefined;
  return (
    <TextField
      label={<span class="unseen">{columnWords.unitOf(letters)}</span>}
      value={text}
      onText={setText}
      complaint={unknown ? columnWords.unitUnknown : undefined}
      onCommit={() => {
        if (!unknown && text !== unit) onUnit(text);
      }}
    />
  );
}
