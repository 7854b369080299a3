import type { JSX } from 'preact';
import { useReducer, useState } from 'preact/hooks';
import { SceneDrawing } from '../drawing/SceneDrawing.tsx';
import { quickScene } from '../drawing/quickScene.ts';
import { InsertFormula } from './InsertFormula.tsx';
import { readQuick, type QuickReading } from './quickAnswer.ts';
import {
  emptyQuick,
  quickReducer,
  displacementUnits,
  type QuickAction,
  type QuickField,
  type QuickState,
  type SetpointKind,
  cellFields,
  type TakenCell,
} from './quickState.ts';
import { quickWords } from './quickWords.ts';
import { ChoiceField } from '../parts/ChoiceField.tsx';
import { Said } from '../parts/Said.tsx';
import { TextField } from '../parts/TextField.tsx';
import { addressOf } from './formula.ts';
import { usePort } from '../app/paneContext.ts';
import { Notice } from '../parts/Notice.tsx';
import { useDeed } from '../parts/useLongDeed.ts';
import { notANumber } from '../../audit/advise/messages/phrases.ts';
import { readNumber } from '../../cells/number.ts';
import { type Cell, isBlank } from '../../cells/cell.ts';
import type { CellPlace, Selection } from '../../hosts/port/port.ts';

type Taken = { readonly cells: readonly TakenCell[] } | { readonly refusal: string };

interface QuickFieldsProps {
  readonly state: QuickState;
  readonly complaints: QuickReading['complaints'];
  readonly dispatch: (action: QuickAction) => void;
}

const kinds: readonly SetpointKind[] = ['danger', 'alert'];

/** One setpoint in, one sentence and one drawing out. */
export function QuickView(): JSX.Element {
  const [state, dispatch] = useReducer(quickReducer, emptyQuick);
  const { complaints, answer } = readQuick(state);
  const scene = answer && quickScene(state, answer);
  return (
    <>
      <h2>{quickWords.title}</h2>
      <p class="quiet">{quickWords.intro}</p>
      <TakeFromSelection dispatch={dispatch} />
      <QuickFields state={state} complaints={complaints} dispatch={dispatch} />
      <div class="answer" aria-live="polite">
        {answer ? (
          <>
            <p class={`answer-sentence verdict-${answer.verdict}`}>{answer.sentence}</p>
            {answer.details.map((text) => (
              <p key={text} class="quiet">
                {text}
              </p>
            ))}
          </>
        ) : (
          <p class="quiet">{quickWords.waiting}</p>
        )}
      </div>
      {scene && <SceneDrawing scene={scene} />}
      {answer && <InsertFormula values={answer.values} sources={state.sources} />}
    </>
  );
}

/** The numbers that the quick answer is worked out from. */
function QuickFields({ state, complaints, dispatch }: QuickFieldsProps): JSX.Element {
  const field = (name: QuickField, unit?: string): JSX.Element => {
    const source = name === 'uncertainty' ? undefined : state.sources[name];
    return (
      <TextField
        label={quickWords[name]}
        value={state.texts[name]}
        numeric
        {...(unit === undefined ? {} : { unit })}
        hint={
          source && (
            <>
              {quickWords.from} <Said text={addressOf(source)} most={60} />
            </>
          )
        }
        complaint={complaints[name]}
        onText={(text) => {
          dispatch({ type: 'typed', field: name, text });
        }}
      />
    );
  };
  return (
    <div class="fields">
      <div class="field-pair">
        <ChoiceField
          label={quickWords.kind}
          value={state.kind}
          choices={kinds.map((kind) => ({ value: kind, text: quickWords[kind] }))}
          onChoice={(value) => {
            dispatch({ type: 'kind', kind: value === 'alert' ? 'alert' : 'danger' });
          }}
        />
        <ChoiceField
          label={quickWords.unit}
          value={state.unit}
          choices={displacementUnits.map((unit) => ({ value: unit, text: unit }))}
          onChoice={(unit) => {
            dispatch({ type: 'unit', unit });
          }}
        />
        {field('setpoint', state.unit)}
        {field('uncertainty', quickWords.uncertaintyUnit)}
        {field('configured')}
        {field('measured')}
      </div>
    </div>
  );
}

/** Takes the three numbers from the cells that are selected in the workbook, and says which it took. */
function TakeFromSelection({ dispatch }: { dispatch: (action: QuickAction) => void }): JSX.Element {
  const port = usePort();
  const deed = useDeed();
  const [taken, setTaken] = useState(false);
  const [refusal, setRefusal] = useState<string | null>(null);
  const take = async (): Promise<void> => {
    setTaken(false);
    setRefusal(null);
    const result = takeThree(await port.readSelection());
    if ('refusal' in result) {
      setRefusal(result.refusal);
      return;
    }
    setTaken(true);
    dispatch({ type: 'took', cells: result.cells });
  };
  const problem = deed.refusal ?? refusal;
  return (
    <div class="deed">
      <button
        type="button"
        class="button"
        onClick={() => {
          deed.run(take);
        }}
      >
        {quickWords.take}
      </button>
      <span class="quiet">{quickWords.takeHint}</span>
      {problem !== null && (
        <Notice tone="problem">
          <Said text={problem} />
        </Notice>
      )}
      {taken && <Notice tone="done">{quickWords.took}</Notice>}
    </div>
  );
}

/** The three filled cells of a selection, row by row, as setpoint, configured and measured sensitivity; else why not. */
export function takeThree(selection: Selection): Taken {
  const filled = filledCells(selection);
  if (filled.length !== cellFields.length) return { refusal: quickWords.tooFew(filled.length) };
  const cells: TakenCell[] = [];
  for (const [index, field] of cellFields.entries()) {
    const found = filled[index];
    if (!found) continue;
    const read = readNumber(found.cell, undefined);
    if ('why' in read) return { refusal: quickWords.noNumber(addressOf(found.place), notANumber[read.why]) };
    cells.push({ field, place: found.place, value: read.value });
  }
  return { cells };
}

function filledCells({ sheet, area, cells }: Selection): { cell: Exclude<Cell, null>; place: CellPlace }[] {
  return cells.flatMap((row, down) =>
    row.flatMap((cell, right) =>
      cell === null || isBlank(cell)
        ? []
        : [{ cell, place: { sheet, row: area.top + down, column: area.left + right } }],
    ),
  );
}
