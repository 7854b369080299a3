import type { Band, Column } from './column.ts';
import { hasLoop, isAxial, level } from './column.ts';
import type { Line } from './line.ts';
import { actingOf } from './acting.ts';

const volts = (id: string, header: string, width: number, value: Column['value']): Column => ({
  id,
  header,
  width,
  style: 'volts',
  value,
});
const loop = (
  of: (loop: NonNullable<Line['channel']['inputs']['loop']>) => number | null,
): Column['value'] => {
  return ({ channel }) => (channel.inputs.loop ? of(channel.inputs.loop) : null);
};

/** What else was measured of the chain: the gain of its monitor, its zero's uncertainty, the ends of its loop. */
export const furtherBand: Band = {
  caption: 'Monitor gain, zero, loop ends (mA)',
  columns: [
    {
      id: 'gain',
      header: 'Monitor gain g',
      width: 9,
      style: 'factor',
      value: ({ channel: { inputs } }) =>
        inputs.gain === 1 && inputs.gainUncertainty === null ? null : inputs.gain,
    },
    {
      id: 'gainUncertainty',
      header: 'Uncertainty of g',
      width: 11,
      style: 'percent',
      value: ({ channel }) => channel.inputs.gainUncertainty,
    },
    volts(
      'zeroUncertainty',
      'Uncertainty of the zero, V',
      11,
      ({ channel }) => channel.inputs.zeroUncertainty,
    ),
    volts(
      'loopAtZero',
      'Loop at 0 %',
      9,
      loop(({ at0 }) => at0),
    ),
    volts(
      'loopAtZeroUncertainty',
      'Loop at 0 %, uncertainty',
      11,
      loop(({ at0Uncertainty }) => at0Uncertainty),
    ),
    volts(
      'loopAtSpan',
      'Loop at 100 %',
      9,
      loop(({ at100 }) => at100),
    ),
    volts(
      'loopAtSpanUncertainty',
      'Loop at 100 %, uncertainty',
      11,
      loop(({ at100Uncertainty }) => at100Uncertainty),
    ),
    {
      id: 'loopSpan',
      header: 'Reading at 100 %',
      width: 9,
      style: level,
      value: loop(({ span }) => span),
    },
    {
      id: 'loopOwn',
      header: 'Ends in place of Km',
      width: 10,
      style: 'centred',
      value: ({ channel: { inputs } }) => (inputs.loop ? (inputs.loop.isAll ? 'yes' : 'no') : null),
    },
  ],
};

/** How setpoint and real level hang together: T = factor·m·S + shift, and how widely each part is known. */
export const actingBand: Band = {
  caption: 'T = factor · m · S + shift; expanded uncertainties',
  columns: [
    {
      id: 'factor',
      header: 'Factor',
      width: 9,
      style: 'ratio',
      value: (line) => actingOf(line)?.factor ?? null,
      formula: 'factor',
    },
    {
      id: 'zeroShift',
      header: 'Shift by the zero',
      width: 9,
      style: 'signed3',
      value: (line) => (isAxial(line) || hasLoop(line) ? (actingOf(line)?.shift ?? null) : null),
      formula: 'zeroShift',
      applies: (line) => isAxial(line) || hasLoop(line),
    },
    ...parts([
      ['ofDivisor', 'Uncertainty of the divisor', 'ratio'],
      ['ofShift', 'of the shift', 'ratio'],
      ['ofGain', 'of g', 'ratio'],
      ['both', 'Covariance', 'ratio'],
    ]),
  ],
};

function parts(
  of: readonly (readonly ['ofDivisor' | 'ofShift' | 'ofGain' | 'both', string, string])[],
): Column[] {
  return of.map(([id, header, style]) => ({
    id,
    header,
    width: 11,
    style,
    value: (line) => (line.threshold.spread === null ? null : (actingOf(line)?.[id] ?? null)),
    formula: id,
  }));
}
