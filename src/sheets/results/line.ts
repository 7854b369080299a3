import type { ThresholdResult } from '../../audit/model/threshold.ts';
import type { Policy } from '../../audit/model/policy.ts';
import type { ChannelResult } from '../../audit/model/report.ts';
import { decimalsFor } from '../look/significant.ts';

/** One line of the results sheet: a threshold with its channel. */
export interface Line {
  readonly channel: ChannelResult;
  readonly threshold: ThresholdResult;
  readonly policy: Policy;
  /** Whether it was worked out, so that formulas have all they need. */
  readonly worked: boolean;
  /** Decimals of levels and of sensitivities. */
  readonly levels: number;
  readonly sensitivities: number;
  readonly findings: string;
}

export function lineOf(
  channel: ChannelResult,
  threshold: ThresholdResult,
  policy: Policy,
  findings: string,
): Line {
  const { configured, measured } = channel.sensitivity;
  return {
    channel,
    threshold,
    policy,
    worked:
      threshold.verdict !== 'incomplete' &&
      threshold.effective !== null &&
      threshold.setpoint !== null &&
      configured !== null &&
      measured !== null,
    levels: decimalsFor(threshold.setpoint),
    sensitivities: decimalsFor(configured ?? measured),
    findings,
  };
}
