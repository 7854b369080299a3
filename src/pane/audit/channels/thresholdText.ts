import { lineReasons } from '../../../audit/advise/lineReasons.ts';
import { ofMeasurement } from '../../../audit/advise/machineSentences.ts';
import { obstacleTexts } from '../../../audit/advise/obstacles.ts';
import type { ChannelInputs, ChannelResult } from '../../../audit/model/report.ts';
import {
  actsFirst,
  trips,
  type LineOfEvidence,
  type NotJudged,
  type ThresholdName,
  type ThresholdResult,
} from '../../../audit/model/threshold.ts';
import { level, listed, percent, verdictWords } from '../../../audit/model/wording.ts';

/** The unit and the step in which a channel's levels are shown. */
export type Shown = Pick<ChannelResult, 'unit'> & { readonly inputs: Pick<ChannelInputs, 'resolution'> };

/** A level of a channel at the step of its monitor, with its unit. */
export function levelOf({ unit, inputs }: Shown, value: number): string {
  return `${level(value, inputs.resolution)}${unit === null || unit === '' ? '' : ` ${unit}`}`;
}

/** What a threshold does when it acts. */
export function actsAs(name: ThresholdName): 'trips' | 'alarms' {
  return trips(name) ? 'trips' : 'alarms';
}

type Acting = Pick<
  ThresholdResult,
  'name' | 'setpoint' | 'multiplier' | 'effective' | 'low' | 'high' | 'verdict'
>;

/** What a threshold is set to and what really happens: `set 5, really trips at 6.25 mil`. */
export function reallyText(shown: Shown, threshold: Acting): string {
  const { name, setpoint, multiplier, effective, low, high, verdict } = threshold;
  if (setpoint === null) return `no setpoint, ${verdictWords.incomplete}`;
  const set = multiplier * setpoint;
  const bare = (value: number): string => level(value, shown.inputs.resolution);
  if (effective === null || verdict === 'unreachable' || verdict === 'incomplete')
    return `set ${levelOf(shown, set)}, ${verdictWords[verdict]}`;
  const really = `set ${bare(set)}, really ${actsAs(name)}`;
  if (verdict === 'undetermined' && low !== null)
    return `${really} from ${bare(low)} to ${high === null ? 'an unknown level' : levelOf(shown, high)}`;
  return `${really} at ${levelOf(shown, effective)}`;
}

/** The panel reading to treat as the setpoint; `null` where none can be given, or the monitor acts before it. */
export function panelText(shown: Shown, threshold: ThresholdResult): string | null {
  const { name, panel } = threshold;
  return panel === null || actsFirst(threshold)
    ? null
    : `Panel reading to treat as ${name}: ${levelOf(shown, panel)}`;
}

/** One line of evidence with its numbers. */
export function lineText(shown: Shown, { by, effective, low, high, verdict, why }: LineOfEvidence): string {
  const at = effective === null ? '' : ` ${levelOf(shown, effective)}`;
  const ends =
    low === null || high === null || effective === null
      ? ''
      : ` (${level(low, shown.inputs.resolution)} to ${level(high, shown.inputs.resolution)})`;
  const reason = why === null ? '' : `: ${lineReasons[why]}`;
  return `By the ${by}:${at}${ends}${at === '' ? ' ' : ', '}${verdictWords[verdict]}${reason}`;
}

const notJudgedWords: Readonly<Record<NotJudged, string>> = {
  reach: 'linear reach',
  uncertainty: 'uncertainty',
  curve: 'calibration curve',
  limit: 'machine limit',
  'full scale': 'full scale',
};

/** What else a threshold's numbers say, a line each: past it now, limit, change, why it is no better, what was not judged, interim setpoint. */
export function remarksOf(channel: ChannelResult, threshold: ThresholdResult): string[] {
  const { shift, shiftFraction, obstacles, notJudged, real, verdict, effective } = threshold;
  const { limit, reading } = channel.inputs;
  const say = (value: number): string => levelOf(channel, value);
  const lines: string[] = [];
  if (threshold.alreadyThere === true && real !== null && reading !== null)
    lines.push(`Past it now: panel ${say(reading)}, really ${say(real)}; the monitor is silent`);
  if (
    (verdict === 'late' || verdict === 'early') &&
    effective !== null &&
    shift !== null &&
    shiftFraction !== null
  )
    lines.push(`${say(Math.abs(shift))} (${percent(Math.abs(shiftFraction))}) ${verdictWords[verdict]}`);
  if (limit !== null && threshold.beyondLimit === 'yes')
    lines.push(`Beyond the machine limit of ${say(limit)}`);
  if (limit !== null && threshold.beyondLimit === 'may')
    lines.push(
      `May act beyond the machine limit of ${say(limit)}${likelyText(threshold.probabilityBeyondLimit)}`,
    );
  if (obstacles.length > 0)
    lines.push(`In the way: ${listed(obstacles.map((obstacle) => obstacleTexts[obstacle]))}`);
  if (notJudged.length > 0)
    lines.push(`Not judged for want of data: ${listed(notJudged.map((what) => notJudgedWords[what]))}`);
  const interim = interimText(channel, threshold);
  if (interim !== null) lines.push(interim);
  return lines;
}

function likelyText(probability: number | null): string {
  if (probability === null) return '';
  const shown =
    probability < 0.001 ? 'below 0.1 %' : probability > 0.999 ? 'above 99.9 %' : percent(probability);
  return `, probability ${shown} ${ofMeasurement}`;
}

/**
 * The interim setpoint that is offered, with what must stand beside it: the step it was rounded to, the room above the
 * present reading, and that it is an interim measure; `null` where none is offered.
 */
function interimText(channel: ChannelResult, { interimSetpoint, setpoint }: ThresholdResult): string | null {
  if (interimSetpoint === null || setpoint === null) return null;
  const say = (value: number): string => levelOf(channel, value);
  const { resolution, reading } = channel.inputs;
  const step = resolution === null ? 'no step is given' : `in steps of ${say(resolution)}`;
  const room = reading === null ? null : Math.sign(setpoint) * (interimSetpoint - reading);
  const headroom =
    room === null
      ? 'no present reading to compare with'
      : room > 0
        ? `${say(room)} above the present reading`
        : 'at or below the present reading: it would act on entry';
  return `Interim setpoint ${say(interimSetpoint)} (${step}; ${headroom}), under the site’s change procedure`;
}
