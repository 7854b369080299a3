import type { Problem, Severity } from '../../audit/model/findings.ts';
import type { Report } from '../../audit/model/report.ts';
import { severities } from '../../audit/model/severity.ts';
import { severityStyle } from '../style/verdictStyles.ts';
import { cell } from '../cells.ts';
import { sheetNames } from '../titles.ts';
import { placeText } from './actionEntry.ts';
import { heading, rest, wide, type Entry } from './layout.ts';

/** What else was found of tables and sheets, one line a kind of problem; nothing where there is none. */
export function problemLines({ problems }: Report): readonly (readonly Entry[])[] {
  if (problems.length === 0) return [];
  return [
    heading('Problems of the sheets'),
    [
      wide('Problem', 'header', 2),
      cell('Severity', 'header'),
      cell('How many', 'headerCentred'),
      wide(`The first of them; all stand on “${sheetNames.problems}”`, 'header', rest(4)),
    ],
    ...kindsOf(problems).map(line),
  ];
}

interface ProblemKind {
  readonly severity: Severity;
  readonly first: Problem;
  readonly count: number;
}

function kindsOf(problems: readonly Problem[]): ProblemKind[] {
  const kinds = new Map<string, ProblemKind>();
  for (const problem of problems) {
    const { rule, severity } = problem;
    const key = `${severity} ${rule}`;
    const known = kinds.get(key);
    kinds.set(key, { severity, first: known?.first ?? problem, count: (known?.count ?? 0) + 1 });
  }
  return [...kinds.values()].sort(
    (one, other) => severities.indexOf(one.severity) - severities.indexOf(other.severity),
  );
}

function line({ severity, first, count }: ProblemKind): readonly Entry[] {
  return [
    wide(first.rule.replaceAll('-', ' '), 'wrapped', 2),
    cell(severity, severityStyle(severity)),
    cell(count, 'count'),
    wide(`${first.message} (${placeText(first)})`, 'wrapped', rest(4)),
  ];
}
