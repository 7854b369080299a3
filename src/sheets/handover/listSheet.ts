import type { Report } from '../../audit/model/report.ts';
import { cell } from '../cells.ts';
import { formulaList } from '../formulaList.ts';
import { wide, type Entry } from '../style/layout.ts';
import { footerOf, leftOut, roomFor } from '../style/print.ts';
import { timeText } from '../auditedLine.ts';
import { attentionOfNoMachine, machineName, type Machine } from '../machines.ts';
import type { SheetModel } from '../model.ts';
import { sheetNames, titleOf } from '../titles.ts';
import { standing, isAllRead } from './answer.ts';
import type { MachineSheetNames } from './names.ts';
import { laidOut, type PageLine, clipped } from './paper.ts';
import { shadeOf, signOf, verdictSigns } from './signs.ts';
import { styles } from './styles.ts';

/** A machine with the names of its sheets; `null` where it has none. */
export interface ListedMachine {
  readonly machine: Machine;
  readonly sheets: MachineSheetNames | null;
}

const widths = [26, 18, 10, 10, 58] as const;

/**
 * The list of machines, worst first, with links to the page and the annex of each and how it stands; before them what of the
 * workbook belongs to no machine, such as what was not read.
 */
export function listSheet(report: Report, machines: readonly ListedMachine[], about: string): SheetModel {
  const { place, all: formulas } = formulaList();
  const made = `Made by Tripdrift, rules version ${report.version}, on ${timeText(report.generated)}, from ${clipped(report.input, 200)}.`;
  const whole = wholeLines(report);
  const wholeRead = isAllRead(report);
  const above = 4 + whole.length;
  const headerRow = above + 1;
  const shown = roomFor(machines.length, headerRow);
  const lines: PageLine[] = [
    { entries: [cell(titleOf('hand-over', report), 'title')], height: 26 },
    full(`${made}${leftOut(machines.length, shown)}`, 'remark'),
    full(report.caution, 'caution'),
    full(about, 'standing'),
    ...whole,
    {
      height: 20,
      entries: ['Machine', 'Worst', 'Page', 'Annex', 'How it stands'].map((header) => cell(header, 'header')),
    },
    ...(machines.length === 0 ? [full('No channel was found.', 'remark')] : []),
    ...machines.slice(0, shown).map((one) => machineLine(one, wholeRead, place)),
  ];
  const { rows, merges } = laidOut(lines, widths, styles);
  return {
    name: sheetNames['hand-over'],
    widths,
    styles,
    formulas,
    rowCount: rows.length,
    rows: () => rows,
    freeze: { rows: headerRow, columns: 0 },
    merges,
    print: {
      landscape: false,
      repeatRows: { from: headerRow, to: headerRow },
      footer: footerOf(report),
    },
  };
}

/** Entries about the whole workbook that the list tells; the audit's own sheets tell all. */
const mostWhole = 12;

function wholeLines(report: Report): PageLine[] {
  const whole = attentionOfNoMachine(report);
  if (whole.length === 0) return [];
  const more = whole.length - mostWhole;
  return [
    full('Of the whole workbook: what was not read, or belongs to no machine', 'section'),
    ...whole.slice(0, mostWhole).map((entry): PageLine => ({
      entries: [
        wide(clipped(entry.headline, 600), entry.severity === 'critical' ? 'warned' : 'wrapped', 4),
        cell(clipped(entry.doNext, 400), 'wrapped'),
      ],
    })),
    ...(more > 0 ? [full(`And ${more} more, on the audit’s own sheets.`, 'remark')] : []),
    { entries: [], height: 9 },
  ];
}

function machineLine(
  { machine, sheets }: ListedMachine,
  wholeRead: boolean,
  place: (formula: string) => number,
): PageLine {
  const [gravest] = machine.attention;
  const link = (sheet: string | undefined, words: string): Entry =>
    sheet === undefined
      ? cell('none', 'wrapped')
      : { value: words, style: 'link', formula: place(`HYPERLINK("#{${sheet}}!A1","${words}")`) };
  return {
    entries: [
      cell(clipped(machineName(machine)), 'name'),
      cell(gravest ? signOf(gravest) : verdictSigns.within, gravest ? shadeOf(gravest.code) : 'within'),
      link(sheets?.page, 'page'),
      link(sheets?.annex, 'annex'),
      cell(clipped(standing(machine, wholeRead), 600), 'wrapped'),
    ],
  };
}

function full(text: string, style: string): PageLine {
  return { entries: [wide(text, style, widths.length)] };
}
