import type { JSX } from 'preact';
import { rounded } from '../../../audit/model/wording.ts';
import type { Panel, PanelAxis } from './recordScene.ts';
import { width } from '../sizes.ts';

/** Sizes of the panels in the drawing's own units. */
export const panelEdges = { left: 40, right: width - 8 } as const;

/** Room above a panel's scale for its title. */
export const panelHead = 20;

export const voltsHeight = 170;

export const lesserHeight = 100;

/** Between panels. */
export const panelGap = 8;

interface PanelDrawingProps {
  readonly panel: Panel;
  readonly x: PanelAxis;
  readonly top: number;
  readonly height: number;
  /** What stands behind the lines and in front of them. */
  readonly behind?: JSX.Element | null;
  readonly before?: JSX.Element | null;
}

/** One panel of a record: its scale at the left, its lines over the gaps. */
export function PanelDrawing({ panel, x, top, height, behind, before }: PanelDrawingProps): JSX.Element {
  const across = (gap: number): number => positionOn(x, gap, panelEdges.left, panelEdges.right);
  const up = (value: number): number => positionOn(panel.y, value, top + height, top + panelHead);
  return (
    <g class="panel">
      <text x={0} y={top + 11}>
        {panel.title}
      </text>
      {panel.y.ticks.map((tick) => (
        <g key={tick} class="tick">
          <line x1={panelEdges.left} x2={panelEdges.right} y1={up(tick)} y2={up(tick)} />
          <text x={panelEdges.left - 4} y={up(tick) + 4} text-anchor="end">
            {rounded(tick)}
          </text>
        </g>
      ))}
      {behind}
      {panel.lines.map(({ role, points }, index) => (
        <polyline
          key={`${role} ${index}`}
          class={`record-line record-${role}`}
          points={points.map(([gap, value]) => `${across(gap)},${up(value)}`).join(' ')}
        />
      ))}
      {panel.lines
        .filter(({ role }) => role === 'measured')
        .flatMap(({ points }) =>
          points.map(([gap, value]) => (
            <circle key={gap} class="record-point" cx={across(gap)} cy={up(value)} r={2.2} />
          )),
        )}
      {before}
    </g>
  );
}

/** Where a value stands between the two ends of a drawn scale; a value off the scale stands at the nearer end. */
export function positionOn({ from, to }: PanelAxis, value: number, start: number, end: number): number {
  const part = Math.min(1, Math.max(0, (value - from) / (to - from)));
  return start + part * (end - start);
}
