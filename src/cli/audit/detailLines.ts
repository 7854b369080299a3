import type { Finding } from '../../audit/model/findings.ts';
import type { ChannelResult, GroupResult, Report } from '../../audit/model/report.ts';
import { thresholdName, type ThresholdResult } from '../../audit/model/threshold.ts';
import { machineSentences } from '../../audit/advise/machineSentences.ts';
import { level, verdictWords } from '../../audit/model/wording.ts';
import { plain, wrapped } from '../terminal.ts';

/** Longest sentence that is shown whole. */
const longest = 1000;

/** What `--details` adds: every channel with its thresholds, every voting group, every finding with the name of its rule. */
export function detailLines({ channels, groups, machines, problems }: Report, width: number): string[] {
  return [
    ...section(
      'Channels, worst first',
      channels.flatMap((channel) => channelLines(channel, width)),
    ),
    ...section(
      'Voting groups',
      groups.flatMap((group) => groupLines(group, width)),
    ),
    ...section(
      'Machines',
      machines.flatMap((machine) =>
        machineSentences(machine).map((sentence) =>
          wrapped(`  ${plain(machine.machine, 60)}: ${plain(sentence, longest)}`, width, '    '),
        ),
      ),
    ),
    ...section(
      'Tables and sheets',
      problems.map((problem) => findingLine(problem, width, '  ')),
    ),
  ];
}

function section(title: string, lines: readonly string[]): string[] {
  return lines.length === 0 ? [] : ['', title, ...lines];
}

function channelLines(channel: ChannelResult, width: number): string[] {
  const { tag, machine, location, verdict, inBypass, asFound, thresholds, findings } = channel;
  const where = [machine, location].filter((text) => text !== '').map((text) => plain(text, 60));
  const of = `${plain(tag, 60)}${where.length > 0 ? ` (${where.join(', ')})` : ''}`;
  const was = asFound === null ? '' : `; as found ${verdictWords[asFound.verdict]}`;
  const bypassed = inBypass === true ? 'in bypass; ' : '';
  return [
    wrapped(`  ${of}: ${bypassed}${verdictWords[verdict]}${was}`, width, '    '),
    ...thresholds.map((threshold) => thresholdLine(channel, threshold, width)),
    ...findings.map((finding) => findingLine(finding, width, '    ')),
  ];
}

function thresholdLine({ unit, inputs }: ChannelResult, threshold: ThresholdResult, width: number): string {
  const { setpoint, multiplier, effective, panel, verdict, governedBy } = threshold;
  const say = (value: number): string => level(value, inputs.resolution) + (unit === null ? '' : ` ${unit}`);
  const parts = [
    ...(setpoint === null ? [] : [`set ${say(multiplier * setpoint)}`]),
    ...(effective === null ? [] : [`really ${say(effective)}`]),
    ...(panel === null ? [] : [`panel ${say(panel)}`]),
    ...(governedBy === null ? [] : [`by the ${governedBy}`]),
  ];
  const told = [verdictWords[verdict], ...parts].map((part) => plain(part, 60)).join(', ');
  return wrapped(`    ${thresholdName(threshold)}: ${told}`, width, '      ');
}

function groupLines(
  {
    name,
    voting,
    machine,
    threshold,
    multiplier,
    unit,
    effective,
    canTrip,
    decidedBy,
    liveVoting,
    out,
    chance,
    findings,
  }: GroupResult,
  width: number,
): string[] {
  const of = `${plain(name, 60)} (${plain(voting, 20)}${machine === '' ? '' : `, ${plain(machine, 60)}`})`;
  const acts =
    !canTrip || effective === null
      ? 'cannot act'
      : liveVoting === 'tripped'
        ? `has tripped by ${decidedBy.map((tag) => plain(tag, 60)).join(', ')}, out of service`
        : `really ${level(effective, null)}${unit === null ? '' : ` ${plain(unit, 20)}`}, set by ${decidedBy.map((tag) => plain(tag, 60)).join(', ')}${out.length > 0 ? `, ${liveVoting} left` : ''}`;
  const side = threshold.startsWith('counter') ? -1 : 1;
  const ends =
    chance === null || chance.low === null || chance.high === null
      ? ''
      : `, between ${level(side * chance.low, null)} and ${level(side * chance.high, null)}`;
  return [
    wrapped(`  ${of} ${thresholdName({ name: threshold, multiplier })}: ${acts}${ends}`, width, '    '),
    ...findings.map((finding) => findingLine(finding, width, '    ')),
  ];
}

function findingLine(
  { severity, rule, sheet, row, column, message }: Finding,
  width: number,
  indent: string,
): string {
  const at = `${plain(sheet, 31)}!${column}${row}`;
  return wrapped(`${indent}${severity} ${rule}, ${at}: ${plain(message, longest)}`, width, `${indent}  `);
}
