import { realOf, shownAs } from '../../../method/ratio/acting.ts';
import { runUpTrip, type RunUpPoint } from '../../../method/runup/runUp.ts';
import type { ChannelResult } from '../../model/report.ts';
import type { RunUpChannel, RunUpOutcome, RunUpPointResult, RunUpThreshold } from '../../model/runUp.ts';
import { trips } from '../../model/threshold.ts';
import type { SpeedSeries } from '../../read/runup/readRunUps.ts';
import { actingWith } from '../replay/chain.ts';
import type { Response } from './responseOf.ts';

type Channel = Omit<ChannelResult, 'findings'>;

/**
 * A channel on a run-up: real and indicated amplitude at each speed, and where each threshold acts and should have. Points
 * where the sensitivity is not known are left out; `null` where no two are left. `factor`: to the channel's unit.
 */
export function runUpChannel(
  channel: Channel,
  series: SpeedSeries,
  response: Response,
  factor: number,
): RunUpChannel | null {
  const { tag, machine, unit, sensitivity } = channel;
  const { configured } = sensitivity;
  if (configured === null || series.amplitudes === null) return null;
  const points = series.points.flatMap(({ speed, value }): RunUpPointResult[] => {
    const own = response.at(speed);
    const acting = actingWith(channel, own);
    if (!acting) return [];
    const amplitude = value * factor;
    const [real, shown] =
      series.amplitudes === 'real'
        ? [amplitude, shownAs(acting, amplitude)]
        : [realOf(acting, amplitude), amplitude];
    return [{ speed, real, shown, sensitivity: own }];
  });
  if (points.length < 2) return null;
  const { peak, peakSpeed } = runUpTrip(methodPoints(points), anySetpoint);
  return {
    tag,
    machine,
    source: series.sheet,
    unit: unit ?? '',
    sensitivityUnit: sensitivity.unit ?? '',
    configured,
    amplitudes: series.amplitudes,
    sensitivityFrom: response.from,
    points,
    peak,
    peakSpeed,
    thresholds: setpointsOf(channel, series).map((setpoint) => resultOf(setpoint, points)),
  };
}

const anySetpoint = { setpoint: 1, multiplier: 1, multiplierSpeed: Infinity, hold: 0 } as const;

type Setpoint = Pick<RunUpThreshold, 'name' | 'setpoint' | 'multiplier' | 'multiplierSpeed' | 'hold'>;

/** With a multiplier and its speed, one case; without its speed, one without it and one with it throughout. */
function setpointsOf({ thresholds, inputs }: Channel, { multiplierSpeed, rate }: SpeedSeries): Setpoint[] {
  return thresholds
    .flatMap(({ name, setpoint, multiplier }): Setpoint[] => {
      if (setpoint === null || !(setpoint > 0)) return [];
      const isMultiplied = thresholds.some((one) => one.name === name && one.multiplier > 1);
      if (multiplier === 1 && isMultiplied && multiplierSpeed !== null) return [];
      const delay = (trips(name) ? inputs.dangerDelay : inputs.alertDelay) ?? 0;
      const hold = (rate ?? 0) * delay;
      return [{ name, setpoint, multiplier, multiplierSpeed: multiplier > 1 ? multiplierSpeed : null, hold }];
    })
    .sort((one, other) => Number(trips(other.name)) - Number(trips(one.name)));
}

function resultOf(set: Setpoint, points: readonly RunUpPointResult[]): RunUpThreshold {
  const multiplierSpeed = set.multiplierSpeed ?? Infinity;
  const { acts, should, realAtTrip } = runUpTrip(methodPoints(points), { ...set, multiplierSpeed });
  const known = (value: number): number | null => (Number.isNaN(value) ? null : value);
  return {
    ...set,
    acts: known(acts),
    should: known(should),
    realAtTrip: known(realAtTrip),
    outcome: outcomeOf(acts, should),
  };
}

function methodPoints(points: readonly RunUpPointResult[]): RunUpPoint[] {
  return points.map(({ speed, real, shown }) => ({ speed, real, indicated: shown }));
}

function outcomeOf(acts: number, should: number): RunUpOutcome {
  if (Number.isNaN(acts)) return Number.isNaN(should) ? 'not reached' : 'no action';
  if (Number.isNaN(should)) return 'false';
  if (Math.abs(acts - should) <= 1e-9 * Math.max(acts, should)) return 'as set';
  return acts > should ? 'late' : 'early';
}
