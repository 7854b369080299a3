import type { Policy } from '../../audit/model/policy.ts';
import type { AsFoundResult, ChannelResult } from '../../audit/model/report.ts';
import {
  thresholdName,
  thresholdNames,
  type EvidenceName,
  type LineOfEvidence,
  type ThresholdResult,
} from '../../audit/model/threshold.ts';
import { cell, finite } from '../cells.ts';
import type { Entry } from '../style/layout.ts';
import { decimalsFor, levelDecimals } from '../style/significant.ts';
import type { ModelCell } from '../model.ts';
import { actingOf, hasPlainInterval, isPlain } from '../results/acting.ts';
import { zeroShift } from '../results/workings.ts';
import { lineOf } from '../results/line.ts';
import { gap, type Block } from './annexPages.ts';
import { otherUnitOf, type OtherUnit } from './otherUnit.ts';
import type { PageLine } from './paper.ts';

/** Gives a formula its number on the sheet. */
export type Place = (formula: string) => number;

/** Columns beside the printed page in which the numbers stand that the formulas of a line need. */
const workings = [
  'Configured',
  'Measured',
  'Uncertainty',
  'Zero shift',
  'Plain setpoint',
  'Uncertainty counted',
  'Panel, not rounded',
] as const;
export const workingColumns = workings.length;

/** Columns of the numbers that the control-room page shows. */
export const numberColumns = { set: 'B', acts: 'C', panel: 'H' } as const;

/**
 * `{r}` is the line's own row. N configured, O measured, P uncertainty, Q shift of the zero, R the setpoint without its
 * multiplier, S the uncertainty that the decision rule counts; one column before them is left free.
 */
const formulas = {
  acts: 'B{r}*N{r}/O{r}+N(Q{r})',
  low: 'MIN(C{r}/(1+P{r}),C{r}/(1-P{r}))',
  high: 'MAX(C{r}/(1+P{r}),C{r}/(1-P{r}))',
  shift: 'SIGN(B{r})*(C{r}-B{r})',
  part: 'F{r}/ABS(B{r})',
  panel: '(R{r}*(1-S{r})-N(Q{r}))*O{r}/N{r}',
} as const;

/** What the numbers of a channel's thresholds follow from: as it stands now, or as it was found. */
interface Stand {
  readonly channel: ChannelResult;
  readonly thresholds: readonly ThresholdResult[];
  readonly isNow: boolean;
}

/** Headers and a line of numbers for each threshold of a channel by each line of evidence, now and as it was found. */
export function numberLines(channel: ChannelResult, policy: Policy, place: Place): Block {
  const other = otherUnitOf(channel.unit);
  const { resolution } = channel.inputs;
  const levels = Math.min(...channel.thresholds.map(({ setpoint }) => levelDecimals(setpoint, resolution)));
  const { asFound } = channel;
  const stands: readonly Stand[] = [
    { channel, thresholds: channel.thresholds, isNow: true },
    ...(asFound
      ? [{ channel: asItWasFound(channel, asFound), thresholds: asFound.thresholds, isNow: false }]
      : []),
  ];
  return [
    { entries: headers(other), height: 28 },
    gap,
    ...stands.flatMap(({ channel: own, thresholds, isNow }) =>
      inOrder(thresholds).flatMap((threshold) =>
        thresholdLines({ channel: own, threshold, isNow, policy, levels, other, place }),
      ),
    ),
  ];
}

function asItWasFound(channel: ChannelResult, asFound: AsFoundResult): ChannelResult {
  const { sensitivity, zeroMeasured, gapVoltage, linearReach } = asFound;
  return { ...channel, sensitivity, inputs: { ...channel.inputs, zeroMeasured, gapVoltage, linearReach } };
}

/** What trips before what warns, the plain settings before those of start-up. */
export function inOrder(thresholds: readonly ThresholdResult[]): readonly ThresholdResult[] {
  const order = [...thresholdNames.filter((name) => name.includes('danger')), ...thresholdNames];
  const rank = ({ name, multiplier }: ThresholdResult) => (multiplier === 1 ? 0 : 10) + order.indexOf(name);
  return thresholds.toSorted((one, other) => rank(one) - rank(other));
}

function headers(other: OtherUnit | null): Entry[] {
  const names = [
    'Set at',
    'Really acts at',
    'at least',
    'at most',
    'Later (+) by',
    'in %',
    'Panel reading to treat as it',
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

interface Numbered {
  readonly channel: ChannelResult;
  readonly threshold: ThresholdResult;
  readonly isNow: boolean;
  readonly policy: Policy;
  readonly levels: number;
  readonly other: OtherUnit | null;
  readonly place: Place;
}

/** The line of evidence that governs first, then the others; one without numbers where there is none. */
function thresholdLines(numbered: Numbered): PageLine[] {
  const { threshold, isNow } = numbered;
  const { lines, governedBy } = threshold;
  const name = `${thresholdName(threshold)}${isNow ? '' : ', as found'}`;
  if (lines.length === 0) return [{ entries: numbersOf(numbered, null, `${name}, not known`), threshold }];
  const ordered = lines.toSorted(
    (one, other) => Number(other.by === governedBy) - Number(one.by === governedBy),
  );
  return ordered.map((line, index): PageLine => {
    const by = lines.length === 1 ? '' : `, by ${evidence[line.by]}`;
    const entries = numbersOf(numbered, line, name + by);
    return index === 0 ? { entries, threshold } : { entries };
  });
}

const evidence: Readonly<Record<EvidenceName, string>> = {
  'listed sensitivity': 'list',
  'calibration record': 'record',
  'known vibration': 'vibration check',
};

function numbersOf(numbered: Numbered, line: LineOfEvidence | null, name: string): Entry[] {
  const { channel, threshold, isNow, policy, levels, other, place } = numbered;
  const { setpoint, multiplier, governedBy, panel } = threshold;
  const [level, signed] = [`level${levels}`, `signed${levels}`];
  const meant = setpoint === null ? null : multiplier * setpoint;
  const { configured, measured } = channel.sensitivity;
  const acts = line === null || meant === null ? null : finite(line.effective);
  const listed = line?.by === 'listed sensitivity' && configured !== null && measured !== null;
  const shift = acts === null || meant === null ? null : Math.sign(meant) * (acts - meant);
  const shown = (value: number | null, style: string, formula: string | false): ModelCell | undefined => {
    if (acts === null || value === null) return dash;
    return formula === false ? cell(value, style) : { value, style, formula: place(formula) };
  };
  return [
    cell(name, line === null || line.by === governedBy ? 'name' : 'wrapped'),
    cell(meant, level) ?? dash,
    acts === null ? cell('not known', 'word') : shown(acts, level, listed && formulas.acts),
    shown(line?.low ?? null, level, listed && hasPlainInterval(channel) && formulas.low),
    shown(line?.high ?? null, level, listed && hasPlainInterval(channel) && formulas.high),
    shown(shift, signed, formulas.shift),
    shown(shift === null || meant === null ? null : shift / Math.abs(meant), 'signedPercent', formulas.part),
    // Nobody is to treat a reading of the past as a setpoint.
    isNow && line !== null && line.by === governedBy ? (cell(panel, level) ?? dash) : dash,
    cell([channel.unit, channel.detection].filter((part) => part !== null).join(' '), 'centred'),
    ...otherCells(other, meant, acts, place),
    undefined,
    ...(listed && acts !== null ? workingCells(channel, threshold, line, policy, levels, place) : []),
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
    value === null
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

function workingCells(
  channel: ChannelResult,
  threshold: ThresholdResult,
  line: LineOfEvidence,
  policy: Policy,
  levels: number,
  place: Place,
): Entry[] {
  const { measured, uncertainty } = channel.sensitivity;
  // A gain, or the ends of a loop, counts as another configured sensitivity.
  const factor = actingOf({ channel })?.factor ?? NaN;
  const configured =
    isPlain(channel) || measured === null ? channel.sensitivity.configured : factor * measured;
  const zero = zeroShift(lineOf(channel, threshold, policy)) ?? 0;
  const style = `level${decimalsFor(configured ?? measured)}`;
  return [
    cell(configured, style),
    cell(measured, style),
    cell(uncertainty, 'percent'),
    cell(zero === 0 ? null : zero, `signed${levels}`),
    cell(threshold.setpoint, `level${levels}`),
    cell(policy.rule === 'guarded' ? (uncertainty ?? 0) : 0, 'percent'),
    line.panel === null
      ? undefined
      : hasPlainInterval(channel)
        ? { value: line.panel, style: `level${levels}`, formula: place(formulas.panel) }
        : cell(line.panel, `level${levels}`),
  ];
}
