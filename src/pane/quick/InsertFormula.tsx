import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import type { CellPlace, Selection } from '../../hosts/port/port.ts';
import { usePort } from '../app/paneContext.ts';
import { Notice } from '../parts/Notice.tsx';
import { Said } from '../parts/Said.tsx';
import { useAction } from '../parts/useLongAction.ts';
import { addressOf, effectiveFormula, sameCell } from './formula.ts';
import type { QuickValues } from './quickAnswer.ts';
import type { QuickState } from './quickState.ts';
import { quickMessages } from './quickMessages.ts';

interface InsertFormulaProps {
  readonly values: QuickValues;
  readonly sources: QuickState['sources'];
}

type Outcome =
  | { readonly kind: 'inserted' | 'itself'; readonly at: CellPlace }
  | { readonly kind: 'filled'; readonly at: CellPlace; readonly moved: boolean };

/** Puts the formula into the selected cell. A filled cell is overwritten only after the user said so, and only that one. */
export function InsertFormula({ values, sources }: InsertFormulaProps): JSX.Element {
  const port = usePort();
  const action = useAction();
  const [said, setSaid] = useState<Outcome | null>(null);

  const insert = async (agreed: CellPlace | null): Promise<void> => {
    const selection = await port.readSelection();
    const at = firstCell(selection);
    if (Object.values(sources).some((source) => sameCell(source, at))) {
      setSaid({ kind: 'itself', at });
      return;
    }
    const overwrite = agreed !== null && sameCell(agreed, at);
    if ((selection.cells[0]?.[0] ?? null) !== null && !overwrite) {
      setSaid({ kind: 'filled', at, moved: agreed !== null });
      return;
    }
    setSaid(null);
    const target = await port.insertFormula(effectiveFormula(values, sources, at), overwrite);
    setSaid({ kind: 'inserted', at: target });
  };
  const start = (agreed: CellPlace | null): void => {
    action.run(() => insert(agreed));
  };

  return (
    <div class="deed">
      <button
        type="button"
        class="button button-first"
        onClick={() => {
          start(null);
        }}
      >
        {quickMessages.insert}
      </button>
      <span class="quiet">{quickMessages.insertHint}</span>
      {action.refusal !== null && (
        <Notice tone="problem">
          <Said text={action.refusal} />
        </Notice>
      )}
      {said?.kind === 'inserted' && (
        <Notice tone="done">
          <Said text={quickMessages.inserted(addressOf(said.at))} />
        </Notice>
      )}
      {said?.kind === 'itself' && (
        <Notice tone="problem">
          <Said text={quickMessages.readsItself(addressOf(said.at))} />
        </Notice>
      )}
      {said?.kind === 'filled' && (
        <Notice tone="warning">
          {said.moved && <Said text={quickMessages.moved(addressOf(said.at))} />}{' '}
          <Said text={quickMessages.filled(addressOf(said.at))} />
          <span class="button-row">
            <button
              type="button"
              class="button"
              onClick={() => {
                start(said.at);
              }}
            >
              {quickMessages.overwrite}
            </button>
            <button
              type="button"
              class="button"
              onClick={() => {
                setSaid(null);
              }}
            >
              {quickMessages.keep}
            </button>
          </span>
        </Notice>
      )}
    </div>
  );
}

function firstCell({ sheet, area }: Selection): CellPlace {
  return { sheet, row: area.top, column: area.left };
}
