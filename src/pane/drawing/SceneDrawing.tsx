import type { JSX } from 'preact';
import { useId } from 'preact/hooks';
import { rounded } from '../../audit/model/wording.ts';
import { drawingWords, sceneInWords } from './drawingWords.ts';
import { LaneDrawing } from './LaneDrawing.tsx';
import { Legend } from './Legend.tsx';
import { positionOf, type Scene } from './scene.ts';
import { axisHeight, edges, footHeight, headHeight, laneHeight, width } from './sizes.ts';

/** Thresholds on one scale, with the limit across them and the linear reach and present reading on the axis. */
export function SceneDrawing({ scene }: { scene: Scene }): JSX.Element {
  const id = useId();
  const { lanes, limit, reach, reading, unit } = scene;
  const top = limit === null ? 2 : headHeight;
  const axis = top + lanes.length * laneHeight + 4;
  const foot = (reach === null ? 0 : footHeight) + (reading === null ? 0 : footHeight);
  const height = axis + axisHeight + foot;
  const x = (value: number): number => positionOf(scene, value, edges.left, edges.right);
  return (
    <figure class="drawing">
      <svg viewBox={`0 0 ${width} ${height}`} role="img" aria-labelledby={id}>
        <title id={id}>{sceneInWords(scene)}</title>
        {limit !== null && (
          <Mark name="limit" at={x(limit)} from={headHeight - 4} to={axis} labelAt={12}>
            {drawingWords.limitLabel(limit, unit)}
          </Mark>
        )}
        {reading !== null && (
          <Mark name="reading" at={x(reading)} from={top} to={axis} labelAt={axis + axisHeight + 8}>
            {drawingWords.readingLabel(reading, unit)}
          </Mark>
        )}
        {lanes.map((lane, index) => (
          <LaneDrawing key={lane.name} scene={scene} lane={lane} top={top + index * laneHeight} />
        ))}
        <line class="axis" x1={edges.left} x2={edges.right} y1={axis} y2={axis} />
        {reach !== null && <Reach scene={scene} reach={reach} axis={axis} y={height - 5} />}
        {scene.ticks.map((tick) => (
          <g key={tick} class="tick">
            <line x1={x(tick)} x2={x(tick)} y1={axis} y2={axis + 5} />
            <text x={x(tick)} y={axis + 17} text-anchor="middle">
              {rounded(tick)}
            </text>
          </g>
        ))}
        <text class="axis-name" x={edges.right} y={axis + 29} text-anchor="end">
          {drawingWords.axis(unit)}
        </text>
      </svg>
      <Legend scene={scene} />
    </figure>
  );
}

interface MarkProps {
  readonly name: 'limit' | 'reading';
  readonly at: number;
  readonly from: number;
  readonly to: number;
  readonly labelAt: number;
  readonly children: string;
}

function Mark({ name, at, from, to, labelAt, children }: MarkProps): JSX.Element {
  const anchor = at > width * 0.7 ? 'end' : at < width * 0.3 ? 'start' : 'middle';
  return (
    <g class={`mark mark-${name}`}>
      <line x1={at} x2={at} y1={from} y2={to} />
      {name === 'reading' && <path d={`M${at},${to}l-5,-9h10z`} />}
      <text x={at} y={labelAt} text-anchor={anchor}>
        {children}
      </text>
    </g>
  );
}

interface ReachProps {
  readonly scene: Scene;
  readonly reach: number;
  readonly axis: number;
  readonly y: number;
}

/** The part of the axis that the chain follows in a straight line; an arrow where it goes on beyond the drawing. */
function Reach({ scene, reach, axis, y }: ReachProps): JSX.Element {
  const start = positionOf(scene, 0, edges.left, edges.right);
  const end = positionOf(scene, reach, edges.left, edges.right);
  return (
    <g class="reach">
      <line x1={start} x2={end} y1={axis} y2={axis} />
      {reach > scene.to ? (
        <path d={`M${edges.right + 8},${axis}l-8,-5v10z`} />
      ) : (
        <line x1={end} x2={end} y1={axis - 6} y2={axis + 6} />
      )}
      <text x={edges.left} y={y}>
        {drawingWords.reachLabel(reach, scene.unit)}
      </text>
    </g>
  );
}
