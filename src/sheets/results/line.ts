import type { EvidenceName, LineOfEvidence, ThresholdResult } from '../../audit/model/threshold.ts';
import type { Policy } from '../../audit/model/policy.ts';
import type { ChannelResult } from '../../audit/model/report.ts';
import { levelDecimals, stylesOfLevels } from '../style/significant.ts';

/** One line of the results sheet: a threshold with its channel. */
export interface Line {
  readonly channel: ChannelResult;
  readonly threshold: ThresholdResult;
  readonly policy: Policy;
  /** Where the listed sensitivity puts the threshold; `null` where that can't be told or nothing may be made of it. */
  readonly listed: LineOfEvidence | null;
  /** Whether it was worked out by the listed sensitivity, so that formulas have all they need. */
  readonly worked: boolean;
  /** Styles of its levels and of differences of levels. */
  readonly styles: { readonly level: string; readonly signed: string };
  readonly action: LineAction;
}

/** What needs action of a threshold, and what to do. */
export interface LineAction {
  readonly headlines: string;
  readonly doNext: string;
}

export const noAction: LineAction = { headlines: '', doNext: '' };

export function lineOf(
  channel: ChannelResult,
  threshold: ThresholdResult,
  policy: Policy,
  action: LineAction = noAction,
): Line {
  const { configured, measured } = channel.sensitivity;
  const own = evidenceBy(threshold, 'listed sensitivity');
  const isComplete =
    threshold.verdict !== 'incomplete' &&
    threshold.setpoint !== null &&
    configured !== null &&
    measured !== null;
  const listed = isComplete && own && own.effective !== null ? own : null;
  return {
    channel,
    threshold,
    policy,
    listed,
    worked: listed !== null,
    styles: stylesOfLevels(levelDecimals(threshold.setpoint, channel.inputs.resolution)),
    action,
  };
}

/** What one piece of evidence says of a threshold; `undefined` where there is none of its kind. */
export function evidenceBy(
  { lines }: Pick<ThresholdResult, 'lines'>,
  name: EvidenceName,
): LineOfEvidence | undefined {
  return lines.find(({ by }) => by === name);
}
