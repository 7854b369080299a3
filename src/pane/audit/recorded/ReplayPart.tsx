import type { JSX } from 'preact';
import { useMemo, useState } from 'preact/hooks';
import { outcomeText, replayedText } from '../../../audit/advise/replayedText.ts';
import { drawnThreshold } from '../../../audit/model/replay.ts';
import type { ReplayedChannel, ReplayResult } from '../../../audit/model/report.ts';
import { clockOf } from '../../../audit/model/wording.ts';
import { CurvesDrawing } from '../../drawing/curves/CurvesDrawing.tsx';
import { curveScene, type Curves } from '../../drawing/curves/curveScene.ts';
import { ChoiceField } from '../../parts/ChoiceField.tsx';
import { Said } from '../../parts/Said.tsx';

/** Recorded readings: choose a channel and see its timeline, when it acted and when it should have. */
export function ReplayPart({ replay }: { replay: ReplayResult }): JSX.Element | null {
  const { channels } = replay;
  const [at, setAt] = useState(0);
  const chosen = channels[at] ?? channels[0];
  const scene = useMemo(() => (chosen ? sceneOf(chosen) : null), [chosen]);
  if (!chosen) return null;
  return (
    <section class="part" aria-label="Replay">
      <h3>Replay: how late, by recorded readings</h3>
      <ChoiceField
        label="Channel"
        value={String(channels.indexOf(chosen))}
        choices={channels.map((channel, index) => ({ value: String(index), text: choiceText(channel) }))}
        onChoice={(value) => {
          setAt(Number(value));
        }}
      />
      {replayedText(chosen).map((text) => (
        <p key={text}>
          <Said text={text} most={300} />
        </p>
      ))}
      {scene && <CurvesDrawing scene={scene} />}
    </section>
  );
}

function choiceText(channel: ReplayedChannel): string {
  const { tag, machine } = channel;
  const first = drawnThreshold(channel);
  const where = machine === '' ? '' : `, ${machine}`;
  return `${tag}${where}${first && first.outcome !== 'not reached' ? `: ${first.name} ${outcomeText(first).split(',')[0] ?? ''}` : ''}`.slice(
    0,
    120,
  );
}

/** The timeline of a channel in minutes from when it should have acted. */
function sceneOf(channel: ReplayedChannel) {
  const { tag, unit, timeline } = channel;
  const threshold = drawnThreshold(channel);
  if (!threshold) return null;
  const { name, setpoint, acted, should } = threshold;
  const zero = should.proven ?? acted.proven ?? timeline[0];
  if (!zero) return null;
  const minutes = (seconds: number): number => (seconds - zero.seconds) / 60;
  const ends = [timeline[0], timeline.at(-1)].flatMap((point) => point ?? []);
  const curves: Curves = {
    title: `${tag} ${name}, shown and real`,
    words: outcomeText(threshold),
    acrossName: `minutes from ${clockOf(zero.time)}`,
    unit,
    shown: timeline.map(({ seconds, shown }) => [minutes(seconds), shown] as const),
    real: timeline.map(({ seconds, real }) => [minutes(seconds), real] as const),
    setpoint: ends.map(({ seconds }) => [minutes(seconds), setpoint] as const),
    acted: acted.proven && minutes(acted.proven.seconds),
    should: should.proven && minutes(should.proven.seconds),
  };
  return curveScene(curves);
}
