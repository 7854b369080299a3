import { realOf } from '../../../method/ratio/acting.ts';
import { factOfThreshold, type Fact } from '../../model/findings.ts';
import type { Policy } from '../../model/policy.ts';
import type { ChannelResult } from '../../model/report.ts';
import type { ResponseChannel } from '../../model/runUp.ts';
import { severityOf } from '../../model/severity.ts';
import { actingWith } from '../replay/chain.ts';
import type { Response } from './responseOf.ts';

type Channel = Omit<ChannelResult, 'findings'>;

/** Where the thresholds of a channel act at its running speed, by the sensitivity there; `null` where that is not known. */
export function atRunningSpeed(channel: Channel, response: Response): ResponseChannel | null {
  const { tag, machine, unit, kind, inputs, thresholds } = channel;
  const { speed } = inputs;
  const own = speed === null ? NaN : response.at(speed);
  const acting = actingWith(channel, own);
  if (speed === null || acting === null || kind === 'axial') return null;
  return {
    tag,
    machine,
    unit: unit ?? '',
    sensitivityFrom: response.from,
    atSpeed: {
      speed,
      sensitivity: own,
      thresholds: thresholds.flatMap(({ name, setpoint, multiplier }) =>
        setpoint === null || multiplier !== 1 ? [] : [{ name, effective: realOf(acting, setpoint) }],
      ),
    },
  };
}

/** Thresholds that are within by the one sensitivity, and late by that at running speed. */
export function lateAtSpeed(
  { thresholds, sensitivity }: Channel,
  { unit, atSpeed }: ResponseChannel,
  { tolerance }: Policy,
): Fact[] {
  return atSpeed.thresholds.flatMap(({ name, effective }) => {
    const judged = thresholds.find((one) => one.name === name && one.multiplier === 1);
    const setpoint = judged?.setpoint ?? NaN;
    if (judged?.verdict !== 'within' || !(effective > setpoint / (1 - tolerance))) return [];
    return [
      factOfThreshold('late-at-running-speed', severityOf(name, 'late') ?? 'warning', judged, {
        setpoint,
        effective,
        unit,
        speed: atSpeed.speed,
        sensitivity: atSpeed.sensitivity,
        sensitivityUnit: sensitivity.unit ?? '',
      }),
    ];
  });
}
