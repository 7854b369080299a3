import type { JSX } from 'preact';
import { useReducer } from 'preact/hooks';
import { SceneDrawing } from '../drawing/SceneDrawing.tsx';
import { quickScene } from '../drawing/quickScene.ts';
import { InsertFormula } from './InsertFormula.tsx';
import { QuickFields } from './QuickFields.tsx';
import { readQuick } from './quickAnswer.ts';
import { emptyQuick, quickReducer } from './quickState.ts';
import { quickMessages } from './quickMessages.ts';
import { Notice } from '../parts/Notice.tsx';
import { useFollow } from './useFollow.ts';
import { TakeFromSelection } from './TakeFromSelection.tsx';

/** One setpoint in, one sentence and one drawing out. `takeSelected`: it begins with what is selected. */
export function QuickView({ takeSelected }: { takeSelected: boolean }): JSX.Element {
  const [state, dispatch] = useReducer(quickReducer, emptyQuick);
  const lost = useFollow(state, dispatch);
  const { faults, answer } = readQuick(state);
  const scene = answer && quickScene(state, answer);
  return (
    <>
      <h2>{quickMessages.title}</h2>
      <TakeFromSelection state={state} dispatch={dispatch} atOnce={takeSelected} />
      {lost && <Notice tone="outdated">{quickMessages.lost}</Notice>}
      <QuickFields state={state} faults={faults} dispatch={dispatch} />
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
          <p class="quiet">{quickMessages.waiting}</p>
        )}
      </div>
      {scene && <SceneDrawing scene={scene} />}
      {answer && <InsertFormula values={answer.values} sources={state.sources} />}
    </>
  );
}
