import type { JSX } from 'preact';
import { laneLabel } from './drawingWords.ts';
import { positionOf, type Lane, type Scene } from './scene.ts';
import { edges, laneHeight } from './sizes.ts';

interface LaneDrawingProps {
  readonly scene: Scene;
  readonly lane: Lane;
  readonly top: number;
}

/** One threshold: an open ring where it is meant to act, a filled diamond where it does, an arrow between them. */
export function LaneDrawing({ scene, lane, top }: LaneDrawingProps): JSX.Element {
  const x = (value: number): number => positionOf(scene, value, edges.left, edges.right);
  const middle = top + laneHeight - 14;
  const { intended, effective, low, high, verdict } = lane;
  return (
    <g class={`lane lane-${verdict}`}>
      <text x={edges.left} y={top + 12}>
        {laneLabel(lane, scene.unit)}
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
    </g>
  );
}
