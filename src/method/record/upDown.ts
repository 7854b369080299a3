import { type CalibrationRecord, calibrationRecord, isFault } from './calibrationRecord.ts';
import { nonlinearity } from './linearity.ts';
import { type GapReading, type Run, type RunFault, isRunFault, runsOf } from './runs.ts';
import { straightLine } from './straightLine.ts';

/** An amount in V, as a fraction of the output span, and as displacement in the unit of the gaps. */
export interface Spread {
  readonly volts: number;
  readonly ofSpan: number;
  readonly displacement: number;
}

/** What a record that was read up and down says. */
export interface UpDown {
  /** Mean of the means of both directions, at the gaps that were read both ways. */
  readonly mean: CalibrationRecord;
  /** Volts between the ends of the mean curve. */
  readonly span: number;
  /** Average sensitivity of the mean curve, V per gap unit, above 0. */
  readonly sensitivity: number;
  readonly hysteresis: Spread;
  /** `undefined` with one cycle alone. */
  readonly repeatability: Spread | undefined;
  readonly terminal: Spread;
  readonly independent: Spread;
  /** Gaps that were read one way only, in order; they stay out. */
  readonly oneWay: readonly number[];
}

/** Why readings are no record of both directions. */
export type UpDownFault = RunFault | 'one direction' | 'too few gaps' | 'does not fall';

/**
 * Hysteresis, repeatability, mean curve and nonlinearity of a record read up and down, in the order in which it was
 * taken; gaps in one unit, volts with their sign, both finite. A cycle is a run and the one that follows it. Hysteresis:
 * largest difference of both directions of one cycle at one gap; repeatability: largest spread of one direction at one
 * gap over two or more cycles. At least three gaps read both ways. Source: 43 CFR 3175.135(a) (read); nonlinearity from
 * memory of ISA-51.1. Example: −10 V up and −10.12 V down at 50 mil, 15.98 V of span → 0.12 V, 0.75 %.
 */
export function upDown(readings: readonly GapReading[]): UpDown | UpDownFault {
  const runs = runsOf(readings);
  if (isRunFault(runs)) return runs;
  if (runs.length < 2) return 'one direction';
  const [up, down] = [byGap(runs.filter((run) => run.up)), byGap(runs.filter((run) => !run.up))];
  const both = [...up.keys()].filter((gap) => down.has(gap)).sort((one, other) => one - other);
  const mean = calibrationRecord(
    both,
    both.map((gap) => (meanOf(up.get(gap)) + meanOf(down.get(gap))) / 2),
    3,
  );
  if (isFault(mean)) return 'too few gaps';
  const slope = straightLine(mean.gaps, mean.volts)?.slope ?? NaN;
  const span = Math.abs((mean.volts.at(-1) ?? NaN) - (mean.volts[0] ?? NaN));
  if (!(slope < 0) || !(span > 0)) return 'does not fall';

  const spread = (volts: number): Spread => ({ volts, ofSpan: volts / span, displacement: volts / -slope });
  const { terminal, independent } = nonlinearity(mean);
  const spreads = [...up, ...down]
    .filter(([gap, volts]) => both.includes(gap) && volts.length > 1)
    .map(([, volts]) => rangeOf(volts));
  return {
    mean,
    span,
    sensitivity: -slope,
    hysteresis: spread(hysteresisOf(runs)),
    repeatability: spreads.length > 0 ? spread(Math.max(...spreads)) : undefined,
    terminal: spread(terminal),
    independent: spread(independent),
    oneWay: [...new Set([...up.keys(), ...down.keys()])]
      .filter((gap) => !both.includes(gap))
      .sort((one, other) => one - other),
  };
}

/** Whether readings are no record of both directions. */
export function isUpDownFault(found: UpDown | UpDownFault): found is UpDownFault {
  return typeof found === 'string' || 'repeated' in found;
}

function byGap(runs: readonly Run[]): Map<number, number[]> {
  const volts = new Map<number, number[]>();
  for (const { readings } of runs)
    for (const one of readings) volts.set(one.gap, [...(volts.get(one.gap) ?? []), one.volts]);
  return volts;
}

function meanOf(volts: readonly number[] = []): number {
  return volts.reduce((sum, one) => sum + one, 0) / volts.length;
}

function rangeOf(volts: readonly number[]): number {
  return Math.max(...volts) - Math.min(...volts);
}

/** Over the cycles, each a run and the next one. */
function hysteresisOf(runs: readonly Run[]): number {
  let most = 0;
  for (let at = 0; at + 1 < runs.length; at += 2) {
    const back = byGap(runs.slice(at + 1, at + 2));
    for (const { gap, volts } of runs[at]?.readings ?? [])
      for (const other of back.get(gap) ?? []) most = Math.max(most, Math.abs(volts - other));
  }
  return most;
}
