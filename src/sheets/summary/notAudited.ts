import type { Problem, Severity } from '../../audit/model/findings.ts';
import type { ChannelResult, Report } from '../../audit/model/report.ts';
import { cell } from '../cells.ts';
import { isAboutThreshold } from '../results/findings.ts';
import { sheetNames } from '../titles.ts';
import { heading, remark, wide, type Entry } from './layout.ts';

const most = 15;

/** What could not be audited and why, and what else was found in the sheets. */
export function notAuditedLines({ channels, problems, summary }: Report): readonly (readonly Entry[])[] {
  const incomplete: ChannelResult[] = [];
  for (const channel of channels) {
    if (incomplete.length === most) break;
    if (channel.verdict === 'incomplete') incomplete.push(channel);
  }
  if (incomplete.length === 0 && problems.length === 0) {
    return [heading('Not audited'), remark('Every row of both tables was audited.')];
  }
  const more = summary.incomplete - incomplete.length;
  return [
    heading('Not audited'),
    ...(incomplete.length > 0
      ? [
          header(['Tag', 'Machine', 'Location'], 'Why it could not be audited'),
          ...incomplete.map(channelLine),
        ]
      : []),
    ...(more > 0
      ? [remark(`And ${more} more: filter “${sheetNames.results}” by the verdict incomplete.`)]
      : []),
    ...(problems.length > 0
      ? [
          [],
          header(
            ['Problem', 'Severity', 'How many'],
            `The first of them; all stand on “${sheetNames.problems}”`,
          ),
          ...kindsOf(problems).map(problemLine),
        ]
      : []),
  ];
}

function header(first: readonly string[], last: string): readonly Entry[] {
  return [
    ...first.map((text) => cell(text, text === 'How many' ? 'headerCentred' : 'header')),
    wide(last, 'header', 6),
  ];
}

function channelLine({ tag, machine, location, findings, source }: ChannelResult): readonly Entry[] {
  const reasons = findings.filter((finding) => finding.severity !== 'note' && !isAboutThreshold(finding));
  const why = reasons.map(
    ({ message, sheet, row, column }) => `${message} (${sheet}, row ${row}, column ${column})`,
  );
  const fallback = `See row ${source.channels.row} of ${source.channels.sheet}.`;
  return [
    cell(tag, 'name'),
    cell(machine, 'wrapped'),
    cell(location, 'wrapped'),
    wide(why.join(' ') || fallback, 'wrapped', 6),
  ];
}

interface ProblemKind {
  readonly rule: string;
  readonly severity: Severity;
  readonly first: Problem;
  readonly count: number;
}

function kindsOf(problems: readonly Problem[]): ProblemKind[] {
  const kinds = new Map<string, ProblemKind>();
  for (const problem of problems) {
    const key = `${problem.severity} ${problem.rule}`;
    const { rule, severity } = problem;
    const known = kinds.get(key);
    kinds.set(key, { rule, severity, first: known?.first ?? problem, count: (known?.count ?? 0) + 1 });
  }
  const order: readonly Severity[] = ['critical', 'warning', 'note'];
  return [...kinds.values()].sort((a, b) => order.indexOf(a.severity) - order.indexOf(b.severity));
}

function problemLine({ rule, severity, first, count }: ProblemKind): readonly Entry[] {
  const { message, sheet, row, column } = first;
  return [
    cell(rule.replaceAll('-', ' '), 'wrapped'),
    cell(severity, 'text'),
    cell(count, 'count'),
    wide(`${message} (${sheet}, row ${row}, column ${column})`, 'wrapped', 6),
  ];
}
