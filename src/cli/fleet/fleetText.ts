import { byUrgency } from '../../audit/advise/attention.ts';
import { orderOfCorrections } from '../../audit/advise/machineSentences.ts';
import type { Attention, Summary } from '../../audit/model/report.ts';
import { verdicts } from '../../audit/model/threshold.ts';
import { verdictWords } from '../../audit/model/wording.ts';
import type { Fleet, FleetFile } from '../../sheets/fleet/types.ts';
import { attentionLine, countSentence, moreOf } from '../audit/attentionLines.ts';
import { plainStyle, type Style } from '../style.ts';
import { plain, wrapped } from '../terminal.ts';
import { mostWorst, type Answer } from './job.ts';

const width = 110;
const shownAtMost = 20;
const longestName = 40;
const mostCorrections = 10;
const longestReason = 1000;

/**
 * A fleet for someone at a terminal: how many things need action, a line a workbook, why some were not audited, the worst of
 * all with what to do, the caution. `answers` in the order of the fleet's files.
 */
export function fleetText(fleet: Fleet, answers: readonly Answer[], style: Style = plainStyle): string {
  const lines = [
    style.strong(`Tripdrift audit of the folder ${plain(fleet.folder)}, ${fleet.generated.slice(0, 10)}`),
    '',
    ...headline(fleet.files, style),
    '',
    ...table(fleet.files, answers),
    ...section('Not audited', refusals(fleet.files), Infinity),
    ...worst(fleet.files, answers, style),
    ...section('What to correct first', corrections(fleet.files), mostCorrections),
    ...section('Left out', fleet.leftOut, Infinity),
    '',
    wrapped(fleet.caution, width, ''),
  ];
  return `${lines.join('\n')}\n`;
}

/** What to know of the copies beside that they are written, one note a line, with the name of its workbook. */
export function copyNotes(names: readonly string[], answers: readonly Answer[]): readonly string[] {
  const notes = answers.flatMap((answer, index) =>
    answer.refused === null
      ? answer.notes.map((note) => `${plain(names[index] ?? '', longestName)}: ${note}`)
      : [],
  );
  return notes.length === 0 ? [] : [...section('To know of the copies', notes).slice(1), ''];
}

/** Which workbooks need a person, each with a proposal, and how to get or give back the proposals. */
export function askedLines(
  names: readonly string[],
  answers: readonly Answer[],
  propose: string | undefined,
): readonly string[] {
  const asked = answers.flatMap(({ asks }, index) => {
    if (!asks) return [];
    const count = asks.questions === 1 ? '1 question' : `${asks.questions} questions`;
    return [`${plain(names[index] ?? '', longestName)}: ${count}`];
  });
  if (asked.length === 0) return [];
  const how =
    propose === undefined
      ? 'Each has a proposal: --propose FOLDER writes them, --map FOLDER audits with them.'
      : `Proposals are written to ${propose}: check them, then audit with --map ${propose}.`;
  return [...section('To be answered', asked).slice(1), wrapped(`  ${how}`, width, '  '), ''];
}

/** Lines below a heading, each wrapped, the first `most` of them; nothing where there is none. */
function section(title: string, lines: readonly string[], most: number = shownAtMost): readonly string[] {
  if (lines.length === 0) return [];
  const shown = lines.slice(0, most).map((line) => wrapped(`  ${line}`, width, '    '));
  const more = lines.length - shown.length;
  return ['', title, ...shown, ...(more > 0 ? [`  and ${more} more.`] : [])];
}

/** The counts of one workbook, in the order of its line. */
const columns: readonly (readonly [string, (summary: Summary) => number])[] = [
  ['channels', ({ channels }) => channels],
  ['critical', ({ critical }) => critical],
  ...verdicts.map((verdict) => [verdictWords[verdict], (summary: Summary) => summary[verdict]] as const),
  ['in bypass', ({ inBypass }) => inBypass],
  ['cannot trip', ({ groupsThatCannotTrip }) => groupsThatCannotTrip],
  ['not read', ({ notRead }) => notRead],
];

/** Corrections over all workbooks, most helpful first, under how their order is made. */
function corrections(files: readonly FleetFile[]): readonly string[] {
  const all = files
    .flatMap(({ file, found }) => (found?.corrections ?? []).map((one) => ({ file, ...one })))
    .sort((one, other) => other.fall - one.fall);
  if (all.length === 0) return [];
  return [
    orderOfCorrections,
    ...all.map(
      ({ file, tag, machine, fall }) =>
        `${plain(tag, longestName)}${machine === '' ? '' : `, ${plain(machine, longestName)}`} (${plain(file, longestName)}): takes ${fall < 0.001 ? 'less than 0.001' : Number(fall.toPrecision(2))} off the expected number of late groups`,
    ),
  ];
}

function headline(files: readonly FleetFile[], style: Style): readonly string[] {
  const refused = files.filter((file) => file.refused !== null).length;
  const workbooks = files.length === 1 ? '1 workbook' : `${files.length} workbooks`;
  const audited =
    refused === 0 ? `${workbooks} audited.` : `${refused} of ${workbooks} could not be audited: see below.`;
  const [all, critical] = [thingsIn(files), criticalIn(files)];
  if (all > 0) {
    const said = countSentence(all, critical);
    return [audited, critical > 0 ? style.critical(said) : style.warning(said)];
  }
  if (refused > 0 || summariesOf(files).some(({ channels }) => channels === 0)) return [audited];
  return [audited, style.good(`${style.signs.good}Nothing needs action.`)];
}

function summariesOf(files: readonly FleetFile[]): readonly Summary[] {
  return files.flatMap(({ found }) => (found ? [found.summary] : []));
}

function thingsIn(files: readonly FleetFile[]): number {
  return summariesOf(files).reduce((sum, { critical, warnings }) => sum + critical + warnings, 0);
}

function criticalIn(files: readonly FleetFile[]): number {
  return summariesOf(files).reduce((sum, { critical }) => sum + critical, 0);
}

function table(files: readonly FleetFile[], answers: readonly Answer[]): readonly string[] {
  const all = 'all workbooks';
  const names = files.map(({ file }) => plain(file, longestName));
  const first = Math.max(all.length, ...names.map((name) => name.length));
  const line = (name: string, cells: readonly string[]): string =>
    [name.padEnd(first), ...cells.map((cell, index) => cell.padStart(widthOf(index)))].join('  ');
  const summaries = summariesOf(files);
  const total = columns.map(([, count]) => summaries.reduce((sum, summary) => sum + count(summary), 0));
  return [
    line(
      'workbook',
      columns.map(([header]) => header),
    ),
    ...files.map(({ found }, index) =>
      line(
        names[index] ?? '',
        found
          ? columns.map(([, count]) => String(count(found.summary)))
          : [answers[index]?.asks ? 'not audited; has a proposal' : 'not audited'],
      ),
    ),
    line(all, total.map(String)),
  ];
}

function widthOf(column: number): number {
  return Math.max(4, columns[column]?.[0].length ?? 0);
}

function refusals(files: readonly FleetFile[]): readonly string[] {
  return files.flatMap(({ file, refused }) =>
    refused === null ? [] : [`${plain(file, longestName)}: ${plain(refused, longestReason)}`],
  );
}

function worst(files: readonly FleetFile[], answers: readonly Answer[], style: Style): readonly string[] {
  const listed = answers
    .flatMap((answer, index) =>
      answer.refused === null ? answer.worst.map((entry) => ({ entry, file: files[index]?.file ?? '' })) : [],
    )
    .toSorted((one, other) => byUrgency(one.entry, other.entry))
    .slice(0, mostWorst);
  if (listed.length === 0) return [];
  const shown: readonly Attention[] = listed.map(({ entry }) => entry);
  const critical = shown.filter(({ severity }) => severity === 'critical').length;
  return [
    '',
    style.strong('Worst first, and what to do'),
    ...listed.map(({ entry, file }) => attentionLine(entry, width, style, `${plain(file, longestName)}: `)),
    ...moreOf(
      thingsIn(files) - shown.length,
      criticalIn(files) - critical,
      'audit the workbooks one by one.',
    ),
  ];
}
