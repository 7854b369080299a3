import type { JSX } from 'preact';
import { useId } from 'preact/hooks';
import { rounded } from '../../audit/model/wording.ts';
import { drawingMessages, sceneInWords, laneLabel } from './drawingMessages.ts';
import { positionOf, type Scene, type Lane } from './scene.ts';
import { axisHeight, edges, footHeight, headHeight, laneHeight, width } from './sizes.ts';
import { laneNumbers } from './laneNumbers.ts';

interface LaneDrawingProps {
  readonly scene: Scene;
  readonly lane: Lane;
  readonly top: number;
}

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
            {drawingMessages.limitLabel(scene, limit)}
          </Mark>
        )}
        {reading !== null && (
          <Mark name="reading" at={x(reading)} from={top} to={axis} labelAt={axis + axisHeight + 8}>
            {drawingMessages.readingLabel(scene, reading)}
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
          {drawingMessages.axis(unit)}
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
        {drawingMessages.reachLabel(scene, reach)}
      </text>
    </g>
  );
}

/** One threshold: an open ring where it is meant to act, a filled diamond where it does, an arrow between them, their numbers below. */
function LaneDrawing({ scene, lane, top }: LaneDrawingProps): JSX.Element {
  const x = (value: number): number => positionOf(scene, value, edges.left, edges.right);
  const middle = top + laneHeight - 26;
  const { intended, effective, low, high, verdict } = lane;
  return (
    <g class={`lane lane-${verdict}`}>
      <text x={edges.left} y={top + 12}>
        {laneLabel(lane, scene)}
      </text>
      <line class="lane-line" x1={edges.left} x2={edges.right} y1={middle} y2={middle} />
      {low !== null && high !== null && (
        <rect
          class="lane-band"
          x={Math.min(x(low), x(high))}
          width={Math.max(2, Math.abs(x(high) - x(low)))}
          y={middle - 8}
          height={16}
          rx={2}
        />
      )}
      {intended !== null && effective !== null && (
        <line class="lane-shift" x1={x(intended)} x2={x(effective)} y1={middle} y2={middle} />
      )}
      {intended !== null && <circle class="lane-intended" cx={x(intended)} cy={middle} r={5} />}
      {effective !== null && (
        <path class="lane-effective" d={`M${x(effective)},${middle - 7}l6,7l-6,7l-6,-7z`} />
      )}
      {laneNumbers(scene, lane).map(({ of, x: at, text }) => (
        <text key={of} class={`lane-number lane-number-${of}`} x={at} y={middle + 19} text-anchor="middle">
          {text}
        </text>
      ))}
    </g>
  );
}

/** What each mark of a drawing means; only marks that the drawing has. */
function Legend({ scene }: { scene: Scene }): JSX.Element {
  const banded = scene.lanes.some((lane) => lane.low !== null && lane.high !== null);
  return (
    <figcaption class="legend" aria-hidden="true">
      <Entry name={drawingMessages.intended}>
        <circle class="lane-intended" cx={8} cy={8} r={5} />
      </Entry>
      <Entry name={drawingMessages.effective}>
        <path class="lane-effective" d="M8,1l6,7l-6,7l-6,-7z" />
      </Entry>
      {banded && (
        <Entry name={drawingMessages.band}>
          <rect class="lane-band" x={1} y={2} width={14} height={12} rx={2} />
        </Entry>
      )}
      {scene.limit !== null && (
        <Entry name={drawingMessages.limit}>
          <g class="mark mark-limit">
            <line x1={8} x2={8} y1={0} y2={16} />
          </g>
        </Entry>
      )}
      {scene.reach !== null && (
        <Entry name={drawingMessages.reach}>
          <g class="reach">
            <line x1={0} x2={16} y1={8} y2={8} />
          </g>
        </Entry>
      )}
      {scene.reading !== null && (
        <Entry name={drawingMessages.reading}>
          <g class="mark mark-reading">
            <path d="M8,13l-5,-9h10z" />
          </g>
        </Entry>
      )}
    </figcaption>
  );
}

function Entry({ name, children }: { name: string; children: JSX.Element }): JSX.Element {
  return (
    <span class="legend-entry">
      <svg width="16" height="16" viewBox="0 0 16 16">
        {children}
      </svg>
      {name}
    </span>
  );
}
