import { correctFirstLine, ofMeasurement } from '../../audit/advise/machineSentences.ts';
import type { Attention, MachineChance, Report, Summary } from '../../audit/model/report.ts';
import { plainStyle, type Style } from '../style.ts';
import { plain, wrapped } from '../terminal.ts';
import { andMore, attentionLine, countSentence, machineIfShared } from './attentionLines.ts';
import { detailLines } from './detailLines.ts';
import { replayLines } from './replayLines.ts';
import { runUpLines } from './runUpLines.ts';
import { verdicts } from '../../audit/model/threshold.ts';
import { verdictWords } from '../../audit/model/wording.ts';
import { changeKinds, changeWords, type Change, type SinceResult } from '../../audit/model/since.ts';

/** Characters before a change's words. */
const indent = 23;

const width = 110;
/** Entries of a list without `--details`. */
const worst = 10;
/** Machines of which it is said what to correct first, without `--details`. */
const mostMachines = 5;

interface Shown {
  /** All entries and findings, with the names of their rules. */
  readonly details?: boolean;
  readonly style?: Style;
}

/**
 * The report for someone at a terminal: what needs action, worst first, with what to do; what was not read; the counts;
 * what changed. Everything with `details`.
 */
export function summaryText(report: Report, { details = false, style = plainStyle }: Shown = {}): string {
  const { attention, since, summary } = report;
  const most = details ? Infinity : worst;
  const from = machineIfShared(report);
  const lines = [
    style.strong(`Tripdrift audit of ${plain(report.input)}, ${report.generated.slice(0, 10)}`),
    '',
    ...headline(report, style),
    ...listOf('Worst first, and what to do', attention, most, style, from),
    ...(details ? [] : listOf('Not read', attention.slice(most).filter(isNotRead), most, style, from)),
    ...(details ? [] : correctFirst(report.machines, style)),
    '',
    ...countLines(summary).map((line) => wrapped(line, width, '  ')),
    ...runUpLines(report, width, most),
    ...replayLines(report, width, most),
    ...(since ? sinceLines(since, width, most) : []),
    ...(details ? detailLines(report, width) : []),
    '',
    wrapped(report.caution, width, ''),
  ];
  return `${lines.join('\n')}\n`;
}

function headline(report: Report, style: Style): string[] {
  const { attention, notRead, summary, since } = report;
  if (attention.length > 0) {
    const { critical } = summary;
    const said = countSentence(attention.length, critical);
    return [critical > 0 ? style.critical(said) : style.warning(said)];
  }
  if (summary.channels === 0) return ['The channel list names no channel, so nothing was audited.'];
  const open = notRead.length + (since ? since.counts.gone + since.counts['not compared'] : 0);
  if (open > 0) return ['See below what is not settled.'];
  return [style.good(`${style.signs.good}Nothing needs action. Keep the record with the machine.`)];
}

/** What to correct first, a line a machine, those first where it helps most. */
function correctFirst(machines: readonly MachineChance[], style: Style): string[] {
  const fall = ({ corrections }: MachineChance): number => corrections.expected[0]?.fall ?? 0;
  const told = machines
    .toSorted((one, other) => fall(other) - fall(one))
    .flatMap((machine) => {
      const line = correctFirstLine(machine);
      return line === null
        ? []
        : [`  ${plain(machine.machine || 'No machine named', 60)}: ${plain(line, 300)}`];
    });
  if (told.length === 0) return [];
  const more = told.length - mostMachines;
  return [
    '',
    style.strong('What to correct first'),
    ...told.slice(0, mostMachines).map((line) => wrapped(line, width, '    ')),
    ...(more > 0 ? [`  and ${more} more machines; --details lists them.`] : []),
    wrapped(`  This order is ${ofMeasurement}.`, width, '  '),
  ];
}

function isNotRead({ code }: Attention): boolean {
  return code === 'not-read';
}

function listOf(
  title: string,
  entries: readonly Attention[],
  most: number,
  style: Style,
  from: (entry: Attention) => string,
): string[] {
  if (entries.length === 0) return [];
  return [
    '',
    style.strong(title),
    ...entries.slice(0, most).map((entry) => attentionLine(entry, width, style, from(entry))),
    ...andMore(entries.slice(most), '--details lists them.'),
  ];
}

/** How many channels act how, those in bypass and those that are not known apart; groups; what was corrected; what was not read. */
function countLines(summary: Summary): string[] {
  const { channels, within, incomplete, inBypass, groupsThatCannotTrip, asLeft, corrected, notRead } =
    summary;
  const wrong = verdicts.filter((verdict) => verdict !== 'within' && verdict !== 'incomplete');
  const acting = [...wrong, 'within' as const].flatMap((verdict) =>
    summary[verdict] > 0 || verdict === 'within' ? [`${summary[verdict]} ${verdictWords[verdict]}`] : [],
  );
  const apart = [
    ...(incomplete > 0 ? [`${incomplete} ${verdictWords.incomplete}`] : []),
    ...(inBypass > 0 ? [`${inBypass} in bypass`] : []),
  ];
  if (channels === 0) return ['No channels.'];
  const all = channels === 1 ? '1 channel' : `${channels} channels`;
  return [
    within === channels
      ? `${all}, all OK.`
      : `${all}: ${acting.join(', ')}${apart.length > 0 ? `; ${apart.join(', ')}` : ''}.`,
    ...(groupsThatCannotTrip > 0
      ? [
          `${groupsThatCannotTrip === 1 ? '1 voting group' : `${groupsThatCannotTrip} voting groups`} cannot trip.`,
        ]
      : []),
    ...(notRead > 0 ? [`${notRead === 1 ? '1 thing was' : `${notRead} things were`} not read.`] : []),
    ...(asLeft > 0
      ? [
          `${asLeft === 1 ? '1 channel was' : `${asLeft} channels were`} measured again after a correction: ${corrected} corrected.`,
        ]
      : []),
  ];
}

/** What changed since an earlier audit, for someone at a terminal: counts, then the worst changes. */
function sinceLines(
  { before, counts, changes, remarks }: SinceResult,
  width: number,
  most: number,
): string[] {
  const when = before.audited === null ? '' : `, ${before.audited.slice(0, 10)}`;
  const source = {
    tables: '',
    report: ` (report${when})`,
    'result sheet': ` (sheet '${plain(before.sheet ?? '', 31)}'${when})`,
  }[before.from];
  const told = changeKinds
    .filter((kind) => counts[kind] > 0)
    .map((kind) => `${counts[kind]} ${changeWords[kind]}`);
  return [
    '',
    `Since ${plain(before.input)}${source}`,
    wrapped(`  ${told.length === 0 ? 'Nothing changed' : told.join(', ')}.`, width, '  '),
    ...changes.slice(0, most).map((change) => changeLine(change, width)),
    ...(changes.length > most ? [`  and ${changes.length - most} more.`] : []),
    ...remarks
      .slice(0, most)
      .map(({ sheet, row, column, message }) =>
        wrapped(
          `  ${sheet === '' ? '' : `${plain(sheet, 31)}!${column}${row}: `}${plain(message)}`,
          width,
          '    ',
        ),
      ),
    ...(remarks.length > most ? [`  and ${remarks.length - most} remarks more.`] : []),
  ];
}

function changeLine({ kind, tag, machine, location, message }: Change, width: number): string {
  const where = [machine, location].filter((text) => text !== '').map((text) => plain(text, 40));
  const of = `${plain(tag, 40)}${where.length > 0 ? ` (${where.join(', ')})` : ''}`;
  return wrapped(
    `  ${changeWords[kind].padEnd(indent - 3)} ${of}: ${plain(message)}`,
    width,
    ' '.repeat(indent),
  );
}
