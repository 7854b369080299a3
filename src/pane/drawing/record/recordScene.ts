import { extent, nice, ticks } from 'd3-array';
import type { ChannelResult, RecordResult } from '../../../audit/model/report.ts';
import type { ShownRecord } from '../../../sheets/records/shown.ts';
import { workedOut } from '../../../sheets/records/workedOut.ts';
import { recordMessages } from './recordMessages.ts';
import { convert } from '../../../units/unit.ts';
import { convertDetection } from '../../../units/detection.ts';
import { parseUnit } from '../../../units/parse.ts';

type Point = readonly [x: number, y: number];

/** A line of one panel; `role` is what it stands for. */
interface PanelLine {
  readonly role: 'measured' | 'rated' | 'fitted' | 'tolerance';
  readonly points: readonly Point[];
}

export interface PanelAxis {
  readonly from: number;
  readonly to: number;
  readonly ticks: readonly number[];
}

/** One of the panels below each other, all over the same gaps. */
export interface Panel {
  readonly title: string;
  readonly y: PanelAxis;
  readonly lines: readonly PanelLine[];
}

/** A channel's calibration record as it is drawn: values in the gap unit, V, and mV per gap unit. */
export interface RecordScene {
  readonly unit: string;
  readonly x: PanelAxis;
  readonly volts: Panel;
  readonly deviation: Panel;
  readonly steps: Panel;
  readonly linear: ShownRecord['linear'];
  readonly operating: Point | null;
  /** Gaps between which the shaft swings, or the one it stands at, when danger acts. */
  readonly danger: { readonly from: number; readonly to: number } | null;
}

/** The drawing of a record; `null` where it has no two different gaps and volts to draw. */
export function recordScene(
  channel: ChannelResult,
  result: RecordResult,
  record: ShownRecord,
): RecordScene | null {
  const { unit, gaps, volts, rated, tolerance, deviation, operatingGap, gapVoltage } = record;
  const worked = workedOut(record);
  const x = axis(gaps, 6);
  if (!x) return null;
  const ends = [gaps[0] ?? NaN, gaps.at(-1) ?? NaN] as const;
  const flat = (value: number): PanelLine => ({
    role: 'tolerance',
    points: [
      [ends[0], value],
      [ends[1], value],
    ],
  });
  const over = (role: PanelLine['role'], values: readonly number[] | null): PanelLine[] =>
    values ? [{ role, points: values.map((value, at): Point => [gaps[at] ?? NaN, value]) }] : [];
  const along = (line: { readonly intercept: number; readonly sensitivity: number } | null) =>
    line && gaps.map((gap) => line.intercept - line.sensitivity * gap);
  const middles = worked.steps.map((step, at): Point => [
    ((gaps[at] ?? NaN) + (gaps[at + 1] ?? NaN)) / 2,
    step,
  ]);
  const limits = rated === null ? [] : [flat(rated * (1 - tolerance)), flat(rated * (1 + tolerance))];
  const panels = {
    volts: panel(recordMessages.volts, [...over('rated', along(worked.rated)), ...over('measured', volts)]),
    deviation: panel(recordMessages.deviation(unit), [
      ...(worked.ratedDeviations ? [flat(-deviation), flat(deviation)] : []),
      ...over('fitted', worked.fittedDeviations),
      ...over('measured', worked.ratedDeviations),
    ]),
    steps: panel(recordMessages.steps(unit), [...limits, { role: 'measured', points: middles }]),
  };
  if (!panels.volts || !panels.deviation || !panels.steps) return null;
  return {
    unit,
    x,
    volts: panels.volts,
    deviation: panels.deviation,
    steps: panels.steps,
    linear: record.linear,
    operating: operatingGap === null || gapVoltage === null ? null : [operatingGap, gapVoltage],
    danger: swingAtDanger(channel, result),
  };
}

function panel(title: string, lines: readonly PanelLine[]): Panel | null {
  const y = axis(
    lines.flatMap(({ points }) => points.map(([, value]) => value)),
    4,
  );
  return y && { title, y, lines };
}

/** A scale with round ends that shows all values; `null` where they are none, or all the same. */
function axis(values: readonly number[], count: number): PanelAxis | null {
  const [least, most] = extent(values.filter(Number.isFinite));
  if (least === undefined || !(least < most)) return null;
  const [from, to] = nice(least, most, count);
  return { from, to, ticks: ticks(from, to, count) };
}

/**
 * Gaps between which the shaft swings about its operating gap when danger acts on the curve, in the record's gap unit.
 * `null` for positions, which do not swing, and where the record can't show it. Source: half the peak-to-peak swing on
 * either side of the operating gap.
 */
function swingAtDanger(
  { kind, unit, detection }: ChannelResult,
  { gapUnit, operatingGap, thresholds }: RecordResult,
): { readonly from: number; readonly to: number } | null {
  const danger = thresholds.find(({ name, multiplier }) => name === 'danger' && multiplier === 1);
  const [own, wanted] = [parseUnit(unit ?? ''), parseUnit(gapUnit)];
  if (kind !== 'radial' || operatingGap === null || !danger || danger.onCurve === null) return null;
  if (!own || !wanted) return null;
  const counted = detection === '0-p' ? '0-p' : 'p-p';
  const swing = convert(convertDetection(danger.onCurve, counted, 'p-p'), own, wanted);
  return Number.isFinite(swing) ? { from: operatingGap - swing / 2, to: operatingGap + swing / 2 } : null;
}
