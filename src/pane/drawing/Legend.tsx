import type { JSX } from 'preact';
import { drawingWords } from './drawingWords.ts';
import type { Scene } from './scene.ts';

/** What each mark of a drawing means; only marks that the drawing has. */
export function Legend({ scene }: { scene: Scene }): JSX.Element {
  const banded = scene.lanes.some((lane) => lane.low !== null && lane.high !== null);
  return (
    <figcaption class="legend" aria-hidden="true">
      <Entry name={drawingWords.intended}>
        <circle class="lane-intended" cx={8} cy={8} r={5} />
      </Entry>
      <Entry name={drawingWords.effective}>
        <path class="lane-effective" d="M8,1l6,7l-6,7l-6,-7z" />
      </Entry>
      {banded && (
        <Entry name={drawingWords.band}>
          <rect class="lane-band" x={1} y={2} width={14} height={12} rx={2} />
        </Entry>
      )}
      {scene.limit !== null && (
        <Entry name={drawingWords.limit}>
          <g class="mark mark-limit">
            <line x1={8} x2={8} y1={0} y2={16} />
          </g>
        </Entry>
      )}
      {scene.reach !== null && (
        <Entry name={drawingWords.reach}>
          <g class="reach">
            <line x1={0} x2={16} y1={8} y2={8} />
          </g>
        </Entry>
      )}
      {scene.reading !== null && (
        <Entry name={drawingWords.reading}>
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
