import { recordInWords } from './recordInWords.ts';
import type { JSX } from 'preact';
import { useId } from 'preact/hooks';
import type { RecordResult } from '../../../audit/model/report.ts';
import { rounded } from '../../../audit/model/wording.ts';
import { axisHeight, width } from '../sizes.ts';
import { PanelDrawing } from './PanelDrawing.tsx';
import { lesserHeight, panelEdges, panelGap, panelHead, voltsHeight } from './panelSizes.ts';
import { positionOn } from './positionOn.ts';
import { RecordLegend } from './RecordLegend.tsx';
import type { RecordScene } from './recordScene.ts';
import { recordWords } from './recordWords.ts';

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
        <title id={title}>{recordWords.heading}</title>
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
          {recordWords.gap(unit)}
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
