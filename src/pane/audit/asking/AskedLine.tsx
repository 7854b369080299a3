import type { JSX } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';
import { meaning } from '../../../audit/read/understand/meaning.ts';
import { Help } from '../../help/Help.tsx';
import { Said } from '../../parts/Said.tsx';
import { chosenIn } from './answers.ts';
import type { AskedRow, Choice } from './askedRow.ts';
import { askingMessages } from './askingMessages.ts';
import { ChangeAnswer } from './ChangeAnswer.tsx';
import type { Asking } from './useAsking.ts';
import { cellAddress } from '../../../cells/address.ts';
import { usePort } from '../../app/paneContext.ts';
import { useAction } from '../../parts/useLongAction.ts';

/** Lines that are shown at once. */
const first = 2;

/** One row: its meaning, the column that is proposed or was chosen for it, first values, unit, why, and how to change it. */
export function AskedLine({ row, asking }: { row: AskedRow; asking: Asking }): JSX.Element {
  const choice = chosenIn(row, asking.chosen);
  const own = asking.chosen.get(row.id);
  const changing = asking.changing === row.id;
  const button = useRef<HTMLButtonElement>(null);
  const wasChanging = useRef(false);
  useLayoutEffect(() => {
    if (wasChanging.current && !changing) button.current?.focus();
    wasChanging.current = changing;
  }, [changing]);
  const unit = own?.unit ?? choice?.unit ?? null;
  return (
    <tr
      role="row"
      class={asking.current === row.id ? 'asked-current' : undefined}
      onFocusIn={() => {
        asking.setCurrent(row);
      }}
      onClick={() => {
        asking.setCurrent(row);
      }}
    >
      <th role="rowheader" scope="row">
        <Said text={row.title} most={80} />{' '}
        {row.column && <Help about={row.title}>{meaning(row.column.meaning).help}</Help>}
        {row.stakes !== '' && (
          <span class="quiet block">
            <Said text={row.stakes} most={120} />
          </span>
        )}
        {row.sheets.length > 0 && (
          <span class="quiet block">
            <Said text={askingMessages.sheets(row.sheets)} most={120} />
          </span>
        )}
        {row.question !== '' && (
          <span class="asked-question">
            <Said text={row.question} most={300} />
          </span>
        )}
      </th>
      <td role="cell" class="asked-where">
        {choice && <Where choice={choice} />}
      </td>
      <td role="cell" class="asked-values">
        <Said text={(choice?.field?.samples ?? []).slice(0, 3).join(', ')} most={80} />
      </td>
      <td role="cell" class="asked-unit">
        {unit === null ? (
          <span class="quiet">{choice?.field ? askingMessages.none : ''}</span>
        ) : (
          <Said text={unit} most={40} />
        )}
      </td>
      <td role="cell" class="asked-why">
        <Evidence lines={own ? [askingMessages.yourChoice] : row.evidence} />
      </td>
      <td role="cell" class={changing ? 'asked-changing' : 'asked-change'}>
        {changing ? (
          <ChangeAnswer row={row} asking={asking} />
        ) : (
          <button
            ref={button}
            type="button"
            class="button"
            aria-label={askingMessages.changeOf(row.title)}
            onClick={() => {
              asking.setChanging(row);
            }}
          >
            {askingMessages.change}
          </button>
        )}
      </td>
    </tr>
  );
}

/** What speaks for something, a line each; where there are many, the rest is folded away. */
function Evidence({ lines }: { lines: readonly string[] }): JSX.Element {
  const rest = lines.slice(first);
  return (
    <>
      {listOf(lines.slice(0, first))}
      {rest.length > 0 && (
        <details>
          <summary>{askingMessages.moreEvidence(rest.length)}</summary>
          {listOf(rest)}
        </details>
      )}
    </>
  );
}

function listOf(lines: readonly string[]): JSX.Element {
  return (
    <ul class="asked-evidence">
      {lines.map((line) => (
        <li key={line}>
          <Said text={line} most={200} />
        </li>
      ))}
    </ul>
  );
}

/** Where a choice lies: sheet and header of its column, or what it says; a button that shows it in the workbook. */
function Where({ choice }: { choice: Choice }): JSX.Element {
  const port = usePort();
  const action = useAction();
  const { field, place, label } = choice;
  if (!place) return <Said text={label} most={200} />;
  return (
    <>
      <button
        type="button"
        class="cell-link"
        onClick={() => {
          action.run(() => port.pointAt(place));
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
      {action.refusal !== null && (
        <span class="field-complaint" role="alert">
          <Said text={action.refusal} />
        </span>
      )}
    </>
  );
}
