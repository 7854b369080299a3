import type { JSX } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';
import { Said } from '../../parts/Said.tsx';
import { chosenIn } from './answers.ts';
import type { AskedRow } from './askedRow.ts';
import { askingWords } from './askingWords.ts';
import { ChangeAnswer } from './ChangeAnswer.tsx';
import { Evidence } from './Evidence.tsx';
import type { Asking } from './useAsking.ts';
import { Where } from './Where.tsx';

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
        <Said text={row.title} most={80} />
        {row.stakes !== '' && (
          <span class="quiet block">
            <Said text={row.stakes} most={120} />
          </span>
        )}
        {row.sheets.length > 0 && (
          <span class="quiet block">
            <Said text={askingWords.sheets(row.sheets)} most={120} />
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
          <span class="quiet">{choice?.field ? askingWords.none : ''}</span>
        ) : (
          <Said text={unit} most={40} />
        )}
      </td>
      <td role="cell" class="asked-why">
        <Evidence lines={own ? [askingWords.yourChoice] : row.evidence} />
      </td>
      <td role="cell" class={changing ? 'asked-changing' : 'asked-change'}>
        {changing ? (
          <ChangeAnswer row={row} asking={asking} />
        ) : (
          <button
            ref={button}
            type="button"
            class="button"
            aria-label={askingWords.changeOf(row.title)}
            onClick={() => {
              asking.setChanging(row);
            }}
          >
            {askingWords.change}
          </button>
        )}
      </td>
    </tr>
  );
}
