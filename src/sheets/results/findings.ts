import { type ThresholdResult, thresholdNames } from '../../audit/model/threshold.ts';
import type { Finding } from '../../audit/model/findings.ts';
import { amount, capital } from '../../audit/model/wording.ts';
import type { ChannelResult } from '../../audit/model/report.ts';
import { sheetNames } from '../titles.ts';

/** Longest text of findings on a line; every finding stands in full on the sheet of problems. */
const longest = 600;

const slugs = thresholdNames.map((name) => `${name.replace(' ', '-')}-`);

/**
 * What was found about a threshold, as one text. Findings about the channel as a whole stand with its danger, and with
 * every threshold that could not be worked out.
 */
export function findingsText(channel: ChannelResult, threshold: ThresholdResult): string {
  if (channel.findings.length === 0) return '';
  const { name, multiplier, verdict } = threshold;
  const takesWhole = (name === 'danger' && multiplier === 1) || verdict === 'incomplete';
  const messages = channel.findings
    .filter((finding) => (isAboutThreshold(finding) ? isAbout(finding, channel, threshold) : takesWhole))
    .map((finding) => finding.message);
  const text = messages.join(' · ');
  return text.length <= longest ? text : `${text.slice(0, longest)}… (in full: ${sheetNames.problems})`;
}

/** Whether a finding is about one threshold, and not about the channel as a whole. */
export function isAboutThreshold({ rule }: Finding): boolean {
  return slugs.some((slug) => rule.startsWith(slug));
}

/** Findings of a multiplied setpoint have the rule names of the plain one, and begin with the setpoint and its multiplier. */
function isAbout(finding: Finding, { unit, thresholds }: ChannelResult, threshold: ThresholdResult): boolean {
  const slug = `${threshold.name.replace(' ', '-')}-`;
  if (!finding.rule.startsWith(slug)) return false;
  const opening = ({ setpoint, multiplier }: ThresholdResult) =>
    `${capital(threshold.name)} ${amount(setpoint ?? NaN, unit ?? '')} × ${multiplier} at start-up `;
  if (threshold.multiplier !== 1) return finding.message.includes(opening(threshold));
  return !thresholds.some(
    (other) =>
      other.name === threshold.name && other.multiplier !== 1 && finding.message.includes(opening(other)),
  );
}
