import type { Policy } from '../../audit/model/policy.ts';
import type { ChannelResult } from '../../audit/model/report.ts';
import { cell, finite } from '../cells.ts';
import type { Entry } from '../look/layout.ts';
import { decimalsFor } from '../look/significant.ts';
import type { ModelCell } from '../model.ts';
import { lineOf, type Line } from '../results/line.ts';
import { channelAsLeft } from './asLeft.ts';
import { onPanel, zeroShiftOf } from './onPanel.ts';
import { otherUnitOf, type OtherUnit } from './otherUnit.ts';
import { gap, type PageLine } from './page.ts';
import { thresholdName, type ThresholdName, type ThresholdResult } from '../../audit/model/threshold.ts';

/** Gives a formula its number on the sheet. */
export type Place = (formula: string) => number;

/** Columns beside the printed page in which the numbers stand that the formulas of a line need. */
const workings = ['Configured', 'Measured', 'Uncertainty', 'Zero shift'] as const;
export const workingColumns = workings.length;

/** `{r}` is the line's own row. N configured, O measured, P uncertainty, Q shift of the zero; one column is left free. */
const formulas = {
  acts: 'B{r}*N{r}/O{r}+N(Q{r})',
  low: 'MIN(C{r}/(1+P{r}),C{r}/(1-P{r}))',
  high: 'MAX(C{r}/(1+P{r}),C{r}/(1-P{r}))',
  shift: 'SIGN(B{r})*(C{r}-B{r})',
  part: 'F{r}/ABS(B{r})',
  panel: '(B{r}-N(Q{r}))*O{r}/N{r}',
} as const;

/** Headers and a line of numbers for each threshold of a channel, and for each as its calibration record has it. */
export function numberLines(channel: ChannelResult, policy: Policy, place: Place): PageLine[] {
  const other = otherUnitOf(channel.unit);
  const levels = Math.min(...channel.thresholds.map(({ setpoint }) => decimalsFor(setpoint)));
  const lines = inOrder(channel.thresholds).map((threshold) => ({
    ...lineOf(channel, threshold, policy, ''),
    levels,
  }));
  return [
    { entries: headers(other), height: 28 },
    gap,
    ...lines.map((line) => ({
      entries: numbers(line, other, place, channel.asLeft ? ', as found' : ''),
      threshold: line.threshold,
    })),
    ...leftLines(channel, policy, levels, other, place),
    ...lines.flatMap((line) => {
      const found = channel.record?.thresholds.find(
        ({ name, multiplier }) => name === line.threshold.name && multiplier === line.threshold.multiplier,
      );
      return found && line.worked && !isNever(line.threshold)
        ? [{ entries: onRecord(line, found.onCurve, other, place) }]
        : [];
    }),
  ];
}

/** The same settings with the chain as it was left. */
function leftLines(
  channel: ChannelResult,
  policy: Policy,
  levels: number,
  other: OtherUnit | null,
  place: Place,
): PageLine[] {
  const left = channelAsLeft(channel);
  return inOrder(left?.thresholds ?? []).map((threshold) => ({
    entries: numbers(
      { ...lineOf(left ?? channel, threshold, policy, ''), levels },
      other,
      place,
      ', as left',
    ),
    threshold,
  }));
}

/** What trips before what warns, the plain settings before those of start-up. */
export function inOrder(thresholds: readonly ThresholdResult[]): readonly ThresholdResult[] {
  const rank = ({ name, multiplier }: ThresholdResult) => (multiplier === 1 ? 0 : 10) + order.indexOf(name);
  return thresholds.toSorted((one, other) => rank(one) - rank(other));
}

const order: readonly ThresholdName[] = ['danger', 'counter danger', 'alert', 'counter alert'];

function headers(other: OtherUnit | null): Entry[] {
  const names = [
    'Set at',
    'Really acts at',
    'at least',
    'at most',
    'Later (+) by',
    'in %',
    'Panel then shows',
  ];
  return [
    cell('Setting', 'labelLeft'),
    ...names.map((name) => cell(name, 'label')),
    cell('Unit', 'labelCentred'),
    ...(other
      ? [cell('Set at', 'label'), cell('Really acts at', 'label'), cell('Unit', 'labelCentred')]
      : [undefined, undefined, undefined]),
    undefined,
    ...workings.map((name) => cell(name, 'label')),
  ];
}

/** Whether a threshold can't act at all, so that there is no level to show. */
export function isNever({ unreachable }: ThresholdResult): boolean {
  return unreachable.includes('above full scale');
}

function numbers(line: Line, other: OtherUnit | null, place: Place, when = ''): Entry[] {
  const { channel, threshold, worked } = line;
  const { setpoint, multiplier, effective, low, high, shift, shiftFraction } = threshold;
  const [level, signed] = [`level${line.levels}`, `signed${line.levels}`];
  const meant = setpoint === null ? null : multiplier * setpoint;
  const acts = worked && !isNever(threshold);
  const calculated = (value: number | null, style: string, formula: string): ModelCell | undefined => {
    const own = acts ? finite(value) : null;
    return own === null ? dash : { value: own, style, formula: place(formula) };
  };
  const panel = onPanel(line);
  const { uncertainty } = channel.sensitivity;
  return [
    cell(
      thresholdName(threshold) + when + (acts && threshold.unreachable.length > 0 ? ', in doubt' : ''),
      'name',
    ),
    cell(meant, level) ?? dash,
    acts
      ? calculated(effective, level, formulas.acts)
      : cell(worked ? 'never' : threshold.verdict === 'incomplete' ? 'not judged' : '–', 'word'),
    calculated(uncertainty === null ? null : low, level, formulas.low),
    calculated(uncertainty === null ? null : high, level, formulas.high),
    calculated(shift, signed, formulas.shift),
    calculated(shiftFraction, 'signedPercent', formulas.part),
    calculated(panel, level, formulas.panel),
    cell([channel.unit, channel.detection].filter((part) => part !== null).join(' '), 'centred'),
    ...otherCells(other, meant, acts ? effective : null, place),
    undefined,
    ...(worked ? workingCells(line) : []),
  ];
}

const dash = cell('–', 'dash');

function otherCells(
  other: OtherUnit | null,
  meant: number | null,
  acts: number | null,
  place: Place,
): Entry[] {
  if (!other) return [undefined, undefined, undefined];
  const inOther = (value: number | null, column: string): ModelCell | undefined =>
    value === null || !Number.isFinite(value)
      ? dash
      : {
          value: other.of(value),
          style: styleOf(other.of(value)),
          formula: place(`${column}{r}${other.formula}`),
        };
  return [inOther(meant, 'B'), inOther(acts, 'C'), cell(other.text, 'centred')];
}

/** The other unit is for the eye: a digit less than the panel's own. */
function styleOf(value: number): string {
  const size = Math.abs(value);
  return `level${size >= 100 ? 0 : size >= 10 ? 1 : size >= 1 ? 2 : 3}`;
}

function workingCells(line: Line): Entry[] {
  const { configured, measured, uncertainty } = line.channel.sensitivity;
  const zero = zeroShiftOf(line);
  const style = `level${line.sensitivities}`;
  return [
    cell(configured, style),
    cell(measured, style),
    cell(uncertainty, 'percent'),
    cell(zero === 0 ? null : zero, `signed${line.levels}`),
  ];
}

/** The same threshold on the measured curve, which is a number and no formula: the curve stands on another sheet. */
function onRecord(line: Line, onCurve: number | null, other: OtherUnit | null, place: Place): Entry[] {
  const { channel, threshold } = line;
  const meant = threshold.multiplier * (threshold.setpoint ?? NaN);
  const shift = onCurve === null ? null : Math.sign(meant) * (onCurve - meant);
  const found = (value: number | null, style: string, formula: string) =>
    value === null ? dash : { value, style, formula: place(formula) };
  return [
    cell(`${thresholdName(threshold)}, curve`, 'text'),
    cell(meant, `level${line.levels}`),
    onCurve === null ? cell('not shown', 'word') : cell(onCurve, `level${line.levels}`),
    dash,
    dash,
    found(shift, `signed${line.levels}`, formulas.shift),
    found(shift === null ? null : shift / Math.abs(meant), 'signedPercent', formulas.part),
    dash,
    cell([channel.unit, channel.detection].filter((part) => part !== null).join(' '), 'centred'),
    ...otherCells(other, meant, onCurve, place),
  ];
}
