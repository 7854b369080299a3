import type { JSX } from 'preact';
import { useId } from 'preact/hooks';
import { rounded } from '../../../audit/model/wording.ts';
import { positionOn } from '../record/PanelDrawing.tsx';
import { axisHeight, width } from '../sizes.ts';
import { piecesOf, type CurvePoint, type CurveScene } from './curveScene.ts';

const edges = { left: 40, right: width - 8, top: 22, foot: 190 } as const;

/** Shown and real over time or speed, with the setpoint, where it acted and where it should have. */
export function CurvesDrawing({ scene }: { scene: CurveScene }): JSX.Element {
  const [title, described] = [useId(), useId()];
  const { x, y, unit, acrossName } = scene;
  const across = (at: number): number => positionOn(x, at, edges.left, edges.right);
  const up = (value: number): number => positionOn(y, value, edges.foot, edges.top);
  const line = (name: string, points: readonly CurvePoint[]): JSX.Element[] =>
    piecesOf(points).map((piece, index) => (
      <polyline
        key={`${name} ${index}`}
        class={`curve curve-${name}`}
        points={piece.map(([at, value]) => `${across(at)},${up(value)}`).join(' ')}
      />
    ));
  const mark = (name: 'acted' | 'should', at: number | null): JSX.Element | null =>
    at === null ? null : (
      <line
        class={`curve-mark curve-${name}`}
        x1={across(at)}
        x2={across(at)}
        y1={edges.top}
        y2={edges.foot}
      />
    );
  return (
    <figure class="drawing">
      <svg
        viewBox={`0 0 ${width} ${edges.foot + axisHeight}`}
        role="img"
        aria-labelledby={title}
        aria-describedby={described}
      >
        <title id={title}>{scene.title}</title>
        <desc id={described}>{scene.words}</desc>
        <text x={0} y={11}>
          {unit}
        </text>
        {y.ticks.map((tick) => (
          <g key={tick} class="tick">
            <line x1={edges.left} x2={edges.right} y1={up(tick)} y2={up(tick)} />
            <text x={edges.left - 4} y={up(tick) + 4} text-anchor="end">
              {rounded(tick)}
            </text>
          </g>
        ))}
        {line('set', scene.setpoint)}
        {line('real', scene.real)}
        {line('shown', scene.shown)}
        {mark('should', scene.should)}
        {mark('acted', scene.acted)}
        <line class="axis" x1={edges.left} x2={edges.right} y1={edges.foot} y2={edges.foot} />
        {x.ticks.map((tick) => (
          <g key={tick} class="tick">
            <line x1={across(tick)} x2={across(tick)} y1={edges.foot} y2={edges.foot + 5} />
            <text x={across(tick)} y={edges.foot + 17} text-anchor="middle">
              {rounded(tick)}
            </text>
          </g>
        ))}
        <text class="axis-name" x={edges.right} y={edges.foot + 30} text-anchor="end">
          {acrossName}
        </text>
      </svg>
      <figcaption class="curve-legend">
        <span class="curve-key curve-real-key">really</span>
        <span class="curve-key curve-shown-key">shown</span>
        <span class="curve-key curve-set-key">set</span>
        {scene.should !== null && <span class="curve-key curve-should-key">should have acted</span>}
        {scene.acted !== null && <span class="curve-key curve-acted-key">acted</span>}
      </figcaption>
    </figure>
  );
}
