import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { usePort } from '../app/paneContext.ts';
import { Notice } from '../parts/Notice.tsx';
import { Said } from '../parts/Said.tsx';
import { useAction } from '../parts/useLongAction.ts';
import { AskRoles } from './AskRoles.tsx';
import { takeFrom, takeByRoles, type Taken } from './fromSelection.ts';
import { cellFields, type QuickAction, type QuickState } from './quickState.ts';
import { quickMessages } from './quickMessages.ts';

interface TakeFromSelectionProps {
  readonly state: QuickState;
  readonly dispatch: (action: QuickAction) => void;
  /** Takes what is selected when the pane opens, too. */
  readonly atOnce: boolean;
}

/** Takes the numbers from the cells that are selected in the workbook by their headers, asks where these do not tell, and says which it took. */
export function TakeFromSelection({ state, dispatch, atOnce }: TakeFromSelectionProps): JSX.Element {
  const port = usePort();
  const action = useAction();
  const [said, setSaid] = useState<readonly string[]>([]);
  const [took, setTook] = useState<string | null>(null);
  const [result, setResult] = useState<Taken | null>(null);
  const settle = (outcome: Taken, taken: (fields: readonly string[]) => string): void => {
    setResult(outcome);
    setSaid([]);
    setTook(null);
    if (!('take' in outcome)) return;
    const { cells, kind, unit, said: more } = outcome.take;
    const names = cells.map(({ field }) =>
      field === 'setpoint' && kind !== null ? quickMessages[kind] : quickMessages[field],
    );
    const others = cellFields.filter((field) => cells.every((cell) => cell.field !== field));
    const missing = others.filter((field) => state.texts[field].trim() === '');
    const kept = others.filter((field) => !missing.includes(field));
    setTook(taken(names));
    setSaid([
      ...more,
      ...(missing.length > 0 ? [quickMessages.missing(missing.map((field) => quickMessages[field]))] : []),
      ...(kept.length > 0 ? [quickMessages.stays(kept.map((field) => quickMessages[field]))] : []),
    ]);
    dispatch({ type: 'took', cells, kind, unit });
  };
  const take = async (): Promise<void> => {
    setResult(null);
    setTook(null);
    const selection = await port.readSelection();
    const { sheets } = await port.readWorkbook();
    const sheet = sheets.find(({ name }) => name === selection.sheet);
    settle(takeFrom(sheet ?? { name: selection.sheet, rows: [] }, selection.area), quickMessages.took);
  };
  useEffect(() => {
    if (atOnce) action.run(take);
  }, []);
  const problem = action.refusal ?? (result && 'refusal' in result ? result.refusal : null);
  return (
    <div class="deed">
      <button
        type="button"
        class="button"
        onClick={() => {
          action.run(take);
        }}
      >
        {quickMessages.take}
      </button>
      <span class="quiet" role="status">
        {took ?? quickMessages.takeHint}
      </span>
      {problem !== null && (
        <Notice tone="problem">
          <Said text={problem} />
        </Notice>
      )}
      {result && 'ask' in result && (
        <AskRoles
          key={result.ask.map(({ place }) => `${place.sheet} ${place.row} ${place.column}`).join()}
          found={result.ask}
          guess={result.guess}
          onUse={(roles) => {
            settle(takeByRoles(result.ask, roles), quickMessages.tookSaid);
          }}
        />
      )}
      {said.length > 0 && (
        <Notice tone="note">
          <Said text={said.join(' ')} most={800} />
        </Notice>
      )}
    </div>
  );
}
