import { shortId } from '../../audit/evidence/fingerprint.ts';
import type { Report } from '../../audit/model/report.ts';
import { correctFirstLine } from '../../audit/advise/machineSentences.ts';
import { formulaList } from '../formulaList.ts';
import { wide } from '../style/layout.ts';
import { chanceOf, machineName, type Machine } from '../machines.ts';
import type { SheetModel } from '../model.ts';
import { answer } from './answer.ts';
import type { AnnexRows } from './annex.ts';
import { entriesOf, faultRows, plainRow, unlistedIn, type ChannelRow } from './channelRows.ts';
import { channelPart } from './channelPart.ts';
import type { TableTools } from './faultTable.ts';
import { canBeDrawn, levelDrawing } from './levelDrawing.ts';
import type { MachineSheetNames } from './names.ts';
import { recordedLines } from './recordedLines.ts';
import { panelStyles } from './panelStyles.ts';
import { heightOfRows, laidOut, pageHeight, type PageLine, clipped } from './paper.ts';
import { columns, full, headLines, section, signaturePart, space, widths } from './pageFrame.ts';
import { styles } from './styles.ts';
import { tasksOf } from './tasks.ts';
import { tripLines } from './tripLines.ts';

const room = { name: 9, scale: columns - 9 } as const;

/** How much of each part a page has. */
interface Amounts {
  readonly channels: number;
  readonly trips: number;
  readonly drawn: number;
  readonly tasks: number;
}

/** What the order of corrections goes by. */
const ofFirst = 'By the uncertainty of the measurement alone; wiring, logic and relays are not counted.';

/** Points of a sheet on a page that is shrunk a little: its largest digits are still told at arm’s length. */
const mostHeight = pageHeight(widths) / 0.82;

/**
 * One printed page that a shift leader acts on: how the machine stands, the panel readings to treat as alert and danger, what
 * still trips, where each really trips, what to do, who signs. What has no room stands on the annex, and the page says so.
 */
export function controlRoomPage(
  machine: Machine,
  report: Report,
  names: MachineSheetNames,
  annexRows: AnnexRows,
): SheetModel {
  const { place, all: formulas } = formulaList();
  const numbers = panelStyles();
  const tools: TableTools = {
    numbers,
    annex: {
      formulaOf: (threshold, column) => {
        const cell = annexRows.cellOf(threshold, column);
        return cell === undefined ? undefined : place(`{${names.annex}}!${cell}`);
      },
    },
    widthOf: (span) => span * 1.7 + ((span - 1) * 5) / 7,
  };
  const fitting = fittingAmounts((amounts) => pageLines(machine, report, names, tools, amounts), numbers);
  const { rows, merges } = laidOut(fitting, widths, { ...styles, ...numbers.all });
  return {
    name: names.page,
    widths,
    styles: { ...styles, ...numbers.all },
    formulas,
    rowCount: rows.length,
    rows: () => rows,
    merges,
    print: {
      landscape: false,
      onePage: true,
      footer: `${clipped(machineName(machine), 40)} · Advisory only · Audit ${shortId(report)}`,
      area: { top: 1, left: 1, bottom: rows.length, right: columns },
    },
  };
}

/** What a page has beside its channels, the most first; the drawing goes last of all. */
const otherAmounts: readonly Omit<Amounts, 'channels'>[] = [[6, 4, 3, 2, 1], [0]].flatMap((drawings) =>
  [5, 4, 3].flatMap((tasks) =>
    [8, 6, 4].flatMap((trips) => drawings.map((drawn) => ({ tasks, trips, drawn }))),
  ),
);

/** The most channels, then what stands beside them, with which the page is not taller than the paper. */
function fittingAmounts(
  linesFor: (amounts: Amounts) => readonly PageLine[],
  numbers: ReturnType<typeof panelStyles>,
): readonly PageLine[] {
  let least: readonly PageLine[] = [];
  for (let channels = 10; channels >= 1; channels--) {
    for (const others of otherAmounts) {
      least = linesFor({ channels, ...others });
      const { rows } = laidOut(least, widths, { ...styles, ...numbers.all });
      if (heightOfRows(rows) <= mostHeight) return least;
    }
  }
  return least;
}

function pageLines(
  machine: Machine,
  report: Report,
  names: MachineSheetNames,
  tools: TableTools,
  amounts: Amounts,
): readonly PageLine[] {
  const faults = faultRows(machine);
  const rows =
    faults.length > 0 || unlistedIn(machine).length > 0
      ? faults
      : machine.channels.map((channel) => plainRow(channel, entriesOf(machine, channel)));
  const shown = rows.slice(0, amounts.channels);
  return [
    ...headLines(machine, report),
    space,
    full(clipped(answer(machine, report), 480), 'answer'),
    ...recordedLines(machine, report).map((words) => full(clipped(words, 240), 'shownStrong')),
    ...channelPart(machine, faults, rows, shown, names, tools),
    ...tripPart(machine, names, amounts.trips),
    ...drawingPart(drawnRows(machine, shown).slice(0, amounts.drawn)),
    ...taskPart(machine, names, amounts.tasks, correctFirstOf(machine, report)),
    ...signaturePart(report),
  ];
}

function tripPart(machine: Machine, names: MachineSheetNames, most: number): PageLine[] {
  const lines = tripLines(machine);
  const more = lines.length - most;
  return [
    ...section('What still trips the machine'),
    ...lines.slice(0, most).map(({ sign, shade, words }): PageLine => ({
      entries: [
        wide(sign === '' ? null : sign, sign === '' ? 'trip' : shade, 6),
        wide(clipped(words, 330), 'trip', columns - 6),
      ],
    })),
    ...(more > 0
      ? [
          full(
            `${more} more voting ${more === 1 ? 'group' : 'groups'}: see sheet '${names.annex}', page 1.`,
            'shownStrong',
          ),
        ]
      : []),
  ];
}

/** Of the channels in the table those that trip somewhere, then the others of the machine. */
function drawnRows(machine: Machine, shown: readonly ChannelRow[]): readonly ChannelRow[] {
  const told = new Set(shown.map(({ channel }) => channel));
  const others = machine.channels.filter((channel) => !told.has(channel)).map((channel) => plainRow(channel));
  return [...shown, ...others].filter(canBeDrawn);
}

function drawingPart(rows: readonly ChannelRow[]): PageLine[] {
  if (rows.length === 0) return [];
  return [
    ...section('Where each channel really trips'),
    {
      entries: [
        wide(null, 'legend', room.name),
        wide(
          '△ set  ▼ really trips  ┃ machine limit. All △ are lined up: ▼ to the right is late, to the left early.',
          'legend',
          room.scale,
        ),
      ],
    },
    ...levelDrawing(rows, room),
  ];
}

/** What to correct first of a machine where not all can be; `null` where its chances are not known. */
function correctFirstOf(machine: Machine, report: Report): string | null {
  const own = chanceOf(machine, report);
  return own ? correctFirstLine(own) : null;
}

function taskPart(
  machine: Machine,
  names: MachineSheetNames,
  mostTasks: number,
  first: string | null,
): PageLine[] {
  const tasks = tasksOf(machine);
  if (tasks.length === 0) return [];
  const more = tasks.length - mostTasks;
  return [
    space,
    {
      entries: [
        wide(`What to do${more > 0 ? ` first (${more} more: see '${names.annex}')` : ''}`, 'section', 32),
        wide('Name', 'labelLeft', 7),
        wide('Time', 'labelLeft', 5),
      ],
    },
    ...tasks.slice(0, mostTasks).map(({ about, words }, index): PageLine => ({
      entries: [
        wide('☐', 'box', 2),
        wide(`${index + 1}. ${about}: ${clipped(words, 240)}`, 'task', 28),
        wide(null, 'signHere', 8),
        wide(null, 'signHere', 6),
      ],
    })),
    ...(first === null ? [] : [full(`${clipped(first, 200)} ${ofFirst}`, 'trip')]),
  ];
}
