import type { Finding, Severity } from '../../audit/model/findings.ts';
import { lateAsLeft } from '../../audit/model/change.ts';
import { worstThreshold } from '../../audit/model/order.ts';
import { groupsThatCannotTrip } from '../../audit/advise/summary.ts';
import type { ChannelResult, Report } from '../../audit/model/report.ts';
import { sinceLines } from './sinceLines.ts';
import { plain, wrapped } from '../terminal.ts';
import { asLeftLines } from './asLeftLines.ts';

const width = 110;
const shownAtMost = 20;

/** The report for someone at a terminal: counts, worst first, what was not audited, what to do next. */
export function summaryText(report: Report): string {
  const lines = [
    `Tripdrift audit of ${plain(report.input)}, ${report.generated.slice(0, 10)}`,
    '',
    ...counts(report),
  ];
  const bad = report.channels.filter(
    (channel) => channel.verdict !== 'within' && channel.verdict !== 'incomplete',
  );
  if (bad.length > 0) lines.push('', 'Worst first', ...bad.slice(0, shownAtMost).map(channelLine));
  if (bad.length > shownAtMost) lines.push(`  and ${bad.length - shownAtMost} more.`);
  if (report.since) lines.push(...sinceLines(report.since, width, shownAtMost));
  lines.push(...asLeftLines(report, width, shownAtMost), ...groupLines(report), ...moreFindings(report));
  lines.push(...notAudited(report), ...problemLines(report));
  lines.push(
    '',
    'What to do next',
    ...nextSteps(report).map((step, index) => `  ${index + 1}. ${wrapped(step, width - 5, '     ')}`),
  );
  lines.push('', wrapped(report.caution, width, ''));
  return `${lines.join('\n')}\n`;
}

function counts({ summary, groups }: Report): string[] {
  const { channels, unreachable, late, undetermined, early, incomplete, within } = summary;
  const idle = groupsThatCannotTrip(groups).map((name) => plain(name));
  return [
    `${channels} channels: ${unreachable} unreachable, ${late} late, ${undetermined} undetermined, ${early} early, ${incomplete} incomplete, ${within} within tolerance.`,
    ...(idle.length > 0
      ? [wrapped(`Groups that cannot trip: ${idle.slice(0, shownAtMost).join(', ')}.`, width, '  ')]
      : []),
  ];
}

function channelLine(channel: ChannelResult): string {
  const where = [channel.machine, channel.location]
    .filter((text) => text !== '')
    .map((text) => plain(text, 40));
  const head = `  ${channel.verdict.padEnd(12)} ${plain(channel.tag, 40)}${where.length > 0 ? ` (${where.join(', ')})` : ''}: `;
  return wrapped(head + plain(leading(channel)?.message ?? ''), width, ' '.repeat(15));
}

function leading(channel: ChannelResult): Finding | undefined {
  const worst = worstThreshold(channel.thresholds);
  const about = worst?.name.replace(' ', '-') ?? '';
  const suits =
    channel.verdict === 'unreachable'
      ? /above-full-scale|out-of-linear|other-side/u
      : new RegExp(channel.verdict, 'u');
  return (
    channel.findings.find((finding) => finding.rule.startsWith(about) && suits.test(finding.rule)) ??
    channel.findings[0]
  );
}

function groupLines({ groups }: Report): string[] {
  const messages = groups.flatMap((group) => group.findings.map((finding) => finding.message));
  if (messages.length === 0) return [];
  return [
    '',
    'Voting groups',
    ...messages.slice(0, shownAtMost).map((text) => `  ${wrapped(plain(text), width - 2, '  ')}`),
  ];
}

function isBeyondLimit({ findings }: ChannelResult): boolean {
  return findings.some(({ rule }) => rule.endsWith('beyond-limit'));
}

const obvious =
  /-(late|early|undetermined)$|-as-left-(unreachable|cured)$|above-full-scale$|out-of-linear-reach$|other-side-of-zero$|^group-/u;

function moreFindings({ channels }: Report): string[] {
  const counted = new Map<string, { severity: Severity; count: number; tag: string }>();
  for (const channel of channels) {
    if (channel.verdict === 'incomplete') continue;
    for (const { rule, severity } of channel.findings) {
      if (obvious.test(rule)) continue;
      const entry = counted.get(rule);
      if (entry) entry.count++;
      else counted.set(rule, { severity, count: 1, tag: channel.tag });
    }
  }
  const order: readonly Severity[] = ['critical', 'warning', 'note'];
  const entries = [...counted].toSorted(
    ([, a], [, b]) => order.indexOf(a.severity) - order.indexOf(b.severity) || b.count - a.count,
  );
  if (entries.length === 0) return [];
  return [
    '',
    'Also found',
    ...entries.map(
      ([rule, { severity, count, tag }]) =>
        `  ${severity.padEnd(12)} ${rule}: ${count} (first at ${plain(tag, 40)})`,
    ),
  ];
}

function notAudited({ channels }: Report): string[] {
  const rows = channels.filter((channel) => channel.verdict === 'incomplete');
  if (rows.length === 0) return [];
  const shown = rows.slice(0, shownAtMost).map((channel) => {
    const why = channel.findings.find((finding) => finding.severity !== 'note');
    const at = why ? `${plain(why.sheet, 31)}!${why.column}${why.row}: ` : '';
    return wrapped(`  ${plain(channel.tag, 40)}: ${at}${plain(why?.message ?? 'not usable')}`, width, '    ');
  });
  return [
    '',
    'Not audited in full',
    ...shown,
    ...(rows.length > shownAtMost ? [`  and ${rows.length - shownAtMost} more.`] : []),
  ];
}

function problemLines({ problems }: Report): string[] {
  if (problems.length === 0) return [];
  const shown = problems
    .slice(0, shownAtMost)
    .map(({ sheet, row, column, message }) =>
      wrapped(`  ${plain(sheet, 31)}!${column}${row}: ${plain(message)}`, width, '    '),
    );
  return [
    '',
    'Problems',
    ...shown,
    ...(problems.length > shownAtMost ? [`  and ${problems.length - shownAtMost} more.`] : []),
  ];
}

function nextSteps({ summary, channels, groups, problems, since }: Report): string[] {
  const slips = channels.some((channel) =>
    channel.findings.some((finding) => finding.rule === 'unit-slip-suspected'),
  );
  const steps: string[] = [];
  if (slips) steps.push('Check the suspected unit slips first: they may explain other findings.');
  if (summary.groupsThatCannotTrip > 0) steps.push('Restore the groups that cannot trip before start-up.');
  if (summary.unreachable + summary.late > 0) {
    steps.push(
      'Correct the chains of the unreachable and late channels and measure again; until then tell operations where each setting really acts.',
    );
  }
  if (lateAsLeft(summary.asLeft) > 0) {
    steps.push(
      'Go back to the channels that are late, unreachable or undetermined as left: see As left above.',
    );
  }
  if (summary.undetermined > 0) steps.push('Measure the undetermined channels more accurately.');
  if (summary.early > 0) steps.push('Expect spurious alarms or trips on the early channels.');
  if (summary.incomplete > 0)
    steps.push('Complete the rows that could not be audited: nothing is known about them.');
  const bypassed = channels.filter(({ inputs }) => inputs.bypass === true).length;
  if (bypassed > 0) {
    steps.push(
      `Take the bypass out of ${bypassed === 1 ? 'the channel' : 'the channels'} that ${bypassed === 1 ? 'is' : 'are'} in it: until then ${bypassed === 1 ? 'it protects' : 'they protect'} nothing.`,
    );
  }
  if (channels.some(({ inputs, verdict }) => inputs.bypass === null && verdict !== 'incomplete')) {
    steps.push(
      'Find out at the monitor whether the channels whose bypass mark is not understood are in bypass.',
    );
  }
  if (channels.some(isBeyondLimit)) {
    steps.push(
      'Have each danger that acts beyond the limit of its machine looked at by those responsible for it.',
    );
  }
  if (since && since.counts.gone + since.counts['not compared'] > 0) {
    steps.push('Find out about the channels that are gone or could not be compared: see Since above.');
  }
  if (steps.length > 0) return steps;
  const open = [...channels, ...groups].some(({ findings }) =>
    findings.some(({ severity }) => severity !== 'note'),
  );
  if (open || problems.length > 0) steps.push('Look at what was found above before the record is kept.');
  else steps.push('Nothing here is outside the policy. Keep the record with the machine.');
  return steps;
}
