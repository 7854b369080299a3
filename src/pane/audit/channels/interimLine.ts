import type { ThresholdResult } from '../../../audit/model/threshold.ts';
import type { ChannelResult } from '../../../audit/model/report.ts';
import { amount } from '../../../audit/model/wording.ts';

/**
 * The interim setpoint of a threshold that acts late, with everything that must stand beside it: the step it was rounded
 * to, the room above the present reading, and that it is an interim measure; `null` where none is called for.
 */
export function interimLine({ unit, inputs }: ChannelResult, threshold: ThresholdResult): string | null {
  const { interimSetpoint, shift, multiplier, setpoint } = threshold;
  if (interimSetpoint === null || setpoint === null || multiplier !== 1 || shift === null || shift <= 0)
    return null;
  const level = (value: number): string => amount(value, unit ?? '');
  const { resolution, reading } = inputs;
  const step =
    resolution === null ? 'not rounded: no step is given' : `rounded to steps of ${level(resolution)}`;
  const sign = Math.sign(setpoint);
  const room = reading === null ? null : sign * (interimSetpoint - reading);
  const headroom =
    room === null
      ? 'no present reading is given to compare with'
      : room > 0
        ? `${level(room)} above the present reading`
        : 'at or below the present reading: it would act on entry';
  return `Interim setpoint ${level(interimSetpoint)} (${step}; ${headroom}). An interim measure, under the site’s management of change.`;
}
