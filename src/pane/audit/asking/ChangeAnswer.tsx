import type { JSX } from 'preact';
import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { meaning } from '../../../audit/read/understand/meaning.ts';
import { parseUnit } from '../../../units/parse.ts';
import { ChoiceField } from '../../parts/ChoiceField.tsx';
import { Said } from '../../parts/Said.tsx';
import { shownText } from '../../parts/shownText.ts';
import { TextField } from '../../parts/TextField.tsx';
import { chosenIn } from './answers.ts';
import type { AskedRow, Choice } from './askedRow.ts';
import { askingMessages } from './askingMessages.ts';
import type { Asking } from './useAsking.ts';

/** Choices that a menu holds at first: a longer one can't be taken in at a glance. */
const shownFirst = 7;

/** Another answer for a row: a column clicked in the sheet or chosen from a list, and its unit. */
export function ChangeAnswer({ row, asking }: { row: AskedRow; asking: Asking }): JSX.Element {
  const box = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    box.current?.querySelector('select')?.focus();
  }, []);
  const now = chosenIn(row, asking.chosen);
  const all = now && !row.choices.includes(now) ? [...row.choices, now] : row.choices;
  const [whole, setWhole] = useState(all.length <= shownFirst);
  const choices = whole ? all : all.filter((choice, index) => index < shownFirst - 1 || choice === now);
  const takesUnit = row.column !== null && meaning(row.column.meaning).dimensions.length > 0;
  return (
    <div
      ref={box}
      class="change-answer"
      onKeyDown={(event) => {
        if (event.key === 'Escape') asking.setChanging(null);
      }}
    >
      <ChoiceField
        label={askingMessages.choiceOf(row.title)}
        labelHidden
        value={String(now ? choices.indexOf(now) : 0)}
        choices={choices.map(({ label }, index) => ({ value: String(index), text: shownText(label, 90) }))}
        onChoice={(value) => {
          const choice = choices[Number(value)];
          if (choice) asking.choose(row, { choice, unit: null });
        }}
      />
      {!whole && (
        <button
          type="button"
          class="button"
          onClick={() => {
            setWhole(true);
            box.current?.querySelector('select')?.focus();
          }}
        >
          {askingMessages.moreChoices(all.length - choices.length)}
        </button>
      )}
      {row.column && <p class="quiet">{askingMessages.click}</p>}
      {asking.fault !== null && (
        <span class="field-complaint" role="alert">
          <Said text={asking.fault} />
        </span>
      )}
      {takesUnit && now?.field && (
        <UnitOf
          key={`${now.field.sheet} ${now.field.place.row} ${now.field.place.column}`}
          row={row}
          choice={now}
          asking={asking}
        />
      )}
      <button
        type="button"
        class="button"
        onClick={() => {
          asking.setChanging(null);
        }}
      >
        {askingMessages.done}
      </button>
    </div>
  );
}

interface UnitOfProps {
  readonly row: AskedRow;
  readonly choice: Choice;
  readonly asking: Asking;
}

function UnitOf({ row, choice, asking }: UnitOfProps): JSX.Element {
  const [text, setText] = useState(asking.chosen.get(row.id)?.unit ?? choice.unit ?? '');
  const unknown = text.trim() !== '' && text !== choice.unit && parseUnit(text) === undefined;
  return (
    <TextField
      label={askingMessages.unitOf(row.title)}
      value={text}
      onText={setText}
      fault={unknown ? askingMessages.unitUnknown : undefined}
      onCommit={() => {
        const said = text.trim();
        if (!unknown) asking.choose(row, { choice, unit: said === '' || said === choice.unit ? null : said });
      }}
    />
  );
}
