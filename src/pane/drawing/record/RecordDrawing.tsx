import type { JSX } from 'preact';
import { useId } from 'preact/hooks';
import type { RecordResult } from '../../../audit/model/report.ts';
import { rounded, amount } from '../../../audit/model/wording.ts';
import { axisHeight, width } from '../sizes.ts';
import {
  PanelDrawing,
  lesserHeight,
  panelEdges,
  panelGap,
  panelHead,
  voltsHeight,
  positionOn,
} from './PanelDrawing.tsx';
import type { RecordScene } from './recordScene.ts';
import { recordMessages } from './recordMessages.ts';

/** A calibration record in three panels over its gaps: volts, deviation from the straight line, sensitivity of each step. */
export function RecordDrawing({ scene, result }: { scene: RecordScene; result: RecordResult }): JSX.Element {
  const title = useId();
  const described = useId();
  const { x, volts, deviation, steps, operating, danger, linear, unit } = scene;
  const across = (gap: number): number => positionOn(x, gap, panelEdges.left, panelEdges.right);
  const second = voltsHeight + panelGap;
  const third = second + lesserHeight + panelGap;
  const foot = third + lesserHeight;
  return (
    <figure class="drawing">
      <svg
        viewBox={`0 0 ${width} ${foot + axisHeight}`}
        role="img"
        aria-labelledby={title}
        aria-describedby={described}
      >
        <title id={title}>{recordMessages.heading}</title>
        <desc id={described}>{recordInWords(result, scene)}</desc>
        <PanelDrawing
          panel={volts}
          x={x}
          top={0}
          height={voltsHeight}
          behind={
            danger && <Span name="danger" {...danger} across={across} top={panelHead} bottom={voltsHeight} />
          }
          before={
            operating && (
              <path
                class="record-operating"
                d={`M${across(operating[0])},${positionOn(volts.y, operating[1], voltsHeight, panelHead) - 7}l5,7l-5,7l-5,-7z`}
              />
            )
          }
        />
        <PanelDrawing panel={deviation} x={x} top={second} height={lesserHeight} />
        <PanelDrawing panel={steps} x={x} top={third} height={lesserHeight} />
        <line class="axis" x1={panelEdges.left} x2={panelEdges.right} y1={foot} y2={foot} />
        {linear && (
          <line class="record-linear" x1={across(linear.from)} x2={across(linear.to)} y1={foot} y2={foot} />
        )}
        {x.ticks.map((tick) => (
          <g key={tick} class="tick">
            <line x1={across(tick)} x2={across(tick)} y1={foot} y2={foot + 5} />
            <text x={across(tick)} y={foot + 17} text-anchor="middle">
              {rounded(tick)}
            </text>
          </g>
        ))}
        <text class="axis-name" x={panelEdges.right} y={foot + 30} text-anchor="end">
          {recordMessages.gap(unit)}
        </text>
      </svg>
      <RecordLegend scene={scene} />
    </figure>
  );
}

interface SpanProps {
  readonly name: 'danger';
  readonly from: number;
  readonly to: number;
  readonly across: (gap: number) => number;
  readonly top: number;
  readonly bottom: number;
}

function Span({ name, from, to, across, top, bottom }: SpanProps): JSX.Element {
  return (
    <rect
      class={`record-${name}`}
      x={across(from)}
      width={Math.max(2, across(to) - across(from))}
      y={top}
      height={bottom - top}
    />
  );
}

/** The drawing in words, for readers who hear the screen. */
function recordInWords(result: RecordResult, { unit, operating, danger, linear }: RecordScene): string {
  const { points, average, rated, thresholds } = result;
  const first = points[0]?.gap ?? NaN;
  const last = points.at(-1)?.gap ?? NaN;
  const parts = [
    `${points.length} points from ${amount(first, '')} to ${amount(last, unit)}, average sensitivity ${amount(average, `mV/${unit}`)}`,
  ];
  if (rated !== null) parts.push(`Rated ${amount(rated, `mV/${unit}`)}`);
  parts.push(
    linear ? `Linear from ${amount(linear.from, '')} to ${amount(linear.to, unit)}` : 'No linear range',
  );
  if (operating) parts.push(`In service at a gap of ${amount(operating[0], unit)}`);
  if (danger)
    parts.push(
      `When danger acts the gap swings from ${amount(danger.from, '')} to ${amount(danger.to, unit)}`,
    );
  else if (thresholds.some(({ name, onCurve }) => name === 'danger' && onCurve === null))
    parts.push('Danger cannot be shown to act on this record');
  return `${parts.join('. ')}.`;
}

/** What each mark of a record's drawing means; only marks that it has. */
function RecordLegend({ scene }: { scene: RecordScene }): JSX.Element {
  const roles = new Set(
    [scene.volts, scene.deviation, scene.steps].flatMap(({ lines }) => lines.map(({ role }) => role)),
  );
  const lines = (['measured', 'rated', 'fitted', 'tolerance'] as const).filter((role) => roles.has(role));
  return (
    <figcaption class="legend" aria-hidden="true">
      {lines.map((role) => (
        <Entry key={role} name={recordMessages[role]}>
          <line class={`record-line record-${role}`} x1={0} x2={24} y1={8} y2={8} />
        </Entry>
      ))}
      {scene.operating && (
        <Entry name={recordMessages.operating}>
          <path class="record-operating" d="M12,1l5,7l-5,7l-5,-7z" />
        </Entry>
      )}
      {scene.danger && (
        <Entry name={recordMessages.danger}>
          <rect class="record-danger" x={2} y={2} width={20} height={12} />
        </Entry>
      )}
      {scene.linear && (
        <Entry name={recordMessages.linear}>
          <line class="record-linear" x1={0} x2={24} y1={8} y2={8} />
        </Entry>
      )}
    </figcaption>
  );
}

function Entry({ name, children }: { name: string; children: JSX.Element }): JSX.Element {
  return (
    <span class="legend-entry">
      <svg width="24" height="16" viewBox="0 0 24 16">
        {children}
      </svg>
      {name}
    </span>
  );
}
