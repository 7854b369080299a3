import type { Attention, Report } from '../../audit/model/report.ts';
import { plainStyle, type Style } from '../style.ts';
import { plain, wrapped } from '../terminal.ts';
import { andMore, attentionLine, howMany } from './attentionLines.ts';
import { countLines } from './countLines.ts';
import { detailLines } from './detailLines.ts';
import { sinceLines } from './sinceLines.ts';

const width = 110;
/** Entries of a list without `--details`. */
const worst = 10;

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
  const lines = [
    style.strong(`Tripdrift audit of ${plain(report.input)}, ${report.generated.slice(0, 10)}`),
    '',
    ...headline(report, style),
    ...listOf('Worst first, and what to do', attention, most, style),
    ...(details ? [] : listOf('Not read', attention.slice(most).filter(isNotRead), most, style)),
    '',
    ...countLines(summary).map((line) => wrapped(line, width, '  ')),
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
    const said = howMany(attention.length, critical);
    return [critical > 0 ? style.critical(said) : style.warning(said)];
  }
  if (summary.channels === 0) return ['The channel list names no channel, so nothing was audited.'];
  const open = notRead.length + (since ? since.counts.gone + since.counts['not compared'] : 0);
  if (open > 0) return ['See below what is not settled.'];
  return [style.good(`${style.signs.good}Nothing needs action. Keep the record with the machine.`)];
}

function isNotRead({ code }: Attention): boolean {
  return code === 'not-read';
}

function listOf(title: string, entries: readonly Attention[], most: number, style: Style): string[] {
  if (entries.length === 0) return [];
  return [
    '',
    style.strong(title),
    ...entries.slice(0, most).map((entry) => attentionLine(entry, width, style)),
    ...andMore(entries.slice(most), '--details lists them.'),
  ];
}
