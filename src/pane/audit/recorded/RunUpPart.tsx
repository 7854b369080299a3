import type { JSX } from 'preact';
import { useMemo, useState } from 'preact/hooks';
import { runUpName, runUpText } from '../../../audit/advise/runUpText.ts';
import type { RunUpChannel, RunUpResult } from '../../../audit/model/report.ts';
import { setpointAt } from '../../../audit/model/runUp.ts';
import { CurvesDrawing } from '../../drawing/curves/CurvesDrawing.tsx';
import { curveScene } from '../../drawing/curves/curveScene.ts';
import { ChoiceField } from '../../parts/ChoiceField.tsx';
import { Said } from '../../parts/Said.tsx';

/** Run-ups: choose a channel and see at which speed it acts, and at which it should. */
export function RunUpPart({ runUps }: { runUps: RunUpResult }): JSX.Element | null {
  const { channels } = runUps;
  const [at, setAt] = useState(0);
  const chosen = channels[at] ?? channels[0];
  const scene = useMemo(() => (chosen ? sceneOf(chosen) : null), [chosen]);
  if (!chosen) return null;
  return (
    <section class="part" aria-label="Run-ups">
      <h3>Run-up: at which speed it trips</h3>
      <ChoiceField
        label="Channel"
        value={String(channels.indexOf(chosen))}
        choices={channels.map(({ tag, machine, thresholds: [first] }, index) => ({
          value: String(index),
          text: [tag, machine, first?.outcome ?? '']
            .filter((text) => text !== '')
            .join(', ')
            .slice(0, 120),
        }))}
        onChoice={(value) => {
          setAt(Number(value));
        }}
      />
      {chosen.thresholds.map((threshold) => (
        <p key={runUpName(threshold)}>
          <Said text={`${chosen.tag} ${runUpName(threshold)}: ${runUpText(chosen, threshold)}.`} most={300} />
        </p>
      ))}
      {scene && <CurvesDrawing scene={scene} />}
    </section>
  );
}

function sceneOf(channel: RunUpChannel) {
  const { tag, unit, points, thresholds } = channel;
  const [threshold] = thresholds;
  if (!threshold) return null;
  const { acts, should } = threshold;
  return curveScene({
    title: `${tag}: amplitude against speed, shown and real`,
    words: runUpText(channel, threshold),
    acrossName: 'r/min',
    unit,
    shown: points.map(({ speed, shown }) => [speed, shown] as const),
    real: points.map(({ speed, real }) => [speed, real] as const),
    setpoint: points.map(({ speed }) => [speed, setpointAt(threshold, speed)] as const),
    acted: acts,
    should,
  });
}
