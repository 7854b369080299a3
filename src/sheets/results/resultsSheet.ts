import type { Report, Attention, ChannelResult } from '../../audit/model/report.ts';
import { cell } from '../cells.ts';
import { auditedLine } from '../auditedLine.ts';
import { tones } from '../style/palette.ts';
import { footerOf, leftOut, roomFor } from '../style/print.ts';
import { shadesFor, verdictWordShades, yesShades } from '../style/shades.ts';
import { widthOfText } from '../style/textWidth.ts';
import { frameStyles, levelStyles } from '../style/styles.ts';
import type { ModelCell, SheetModel } from '../model.ts';
import { sheetNames, tableNames, titleOf } from '../titles.ts';
import { bands, list, printedColumns } from './columns.ts';
import { headerRow } from './headerRow.ts';
import { lineOf, noAction, type LineAction } from './line.ts';
import { policyRows } from './policyCells.ts';
import type { ThresholdResult } from '../../audit/model/threshold.ts';

/** What something is about, as findings and what needs action name it. */
interface About {
  readonly threshold: ThresholdResult['name'] | null;
  readonly multiplier: number | null;
}

/** What needs action, by the sheet and row of the channel list that it is about. */
type ActionsByRow = ReadonlyMap<string, ReadonlyMap<number, readonly Attention[]>>;

/** The column in the title's row that says what was audited when. */
export const auditedColumn = 4;
const input = { named: 'Tripdrift input', fill: tones.input, underline: true } as const;

/** One row a threshold in the report's order, with native formulas from the inputs beside them. */
export function resultsSheet(report: Report): SheetModel {
  const total = report.channels.reduce((sum, channel) => sum + channel.thresholds.length, 0);
  const shown = roomFor(total, headerRow);
  const lastRow = headerRow + shown;
  const below = (id: string) => list.below(id, headerRow + 1, Math.max(lastRow, headerRow + 1));
  return {
    name: sheetNames.results,
    widths: list.columns.map(({ id, width }) => widthOf(id, width, report)),
    styles: {
      ...frameStyles,
      ...levelStyles,
      verdict: { bold: true, valign: 'top' },
      input: { ...input },
      inputPercent: { ...input, numberFormat: '0.0%' },
      inputVolts: { ...input, numberFormat: '0.00' },
    },
    formulas: list.formulas,
    rowCount: lastRow,
    *rows() {
      yield { height: 24, cells: titleCells(report) };
      yield { cells: [cell(report.caution + leftOut(total, shown), 'cautionLine')] };
      yield* policyRows(report.policy);
      yield { cells: captions() };
      yield { height: 45, cells: list.headers };
      const actions = actionsByRow(report.attention);
      let left = shown;
      for (const channel of report.channels) {
        const own = actionsOf(actions, channel);
        for (const threshold of channel.thresholds) {
          if (left-- <= 0) return;
          const action = actionOf(own, channel, threshold);
          yield list.row(lineOf(channel, threshold, report.policy, action));
        }
      }
    },
    freeze: { rows: headerRow, columns: 1 },
    ...(shown > 0 && {
      table: {
        name: tableNames.results,
        area: { top: headerRow, left: 1, bottom: lastRow, right: list.columns.length },
      },
    }),
    shades: [
      ...shadesFor(below('verdict'), verdictWordShades),
      ...['inBypass', 'beyondLimit', 'alreadyThere'].flatMap((id) => shadesFor(below(id), yesShades)),
    ],
    print: {
      landscape: true,
      repeatRows: { from: headerRow - 1, to: headerRow },
      footer: footerOf(report),
      area: { top: 1, left: 1, bottom: lastRow, right: printedColumns },
    },
  };
}

/** Columns whose names are as long as a site has them. */
const named = ['tag', 'machine', 'location'] as const;
const widest = 40;

/** Width of a column: at least its own, and as wide as the longest of its names as far as that is no sentence. */
function widthOf(id: string, width: number, { channels }: Report): number {
  const part = named.find((one) => one === id);
  if (part === undefined) return width;
  const longest = channels.reduce(
    (long, channel) => (channel[part].length > long.length ? channel[part] : long),
    '',
  );
  return Math.min(widest, Math.max(width, Math.ceil(widthOfText(longest))));
}

/** The title and, clear of it, what was audited when: by this a later comparison tells the audits apart. */
function titleCells(report: Report): (ModelCell | undefined)[] {
  const cells: (ModelCell | undefined)[] = [cell(titleOf('results', report), 'title')];
  cells[auditedColumn - 1] = cell(auditedLine(report), 'subtitle');
  return cells;
}

function captions(): (ModelCell | undefined)[] {
  return bands.flatMap(({ caption, columns: own }) =>
    own.map((_, index) => cell(index === 0 ? caption : null, 'band')),
  );
}

function actionsByRow(attention: readonly Attention[]): ActionsByRow {
  const found = new Map<string, Map<number, Attention[]>>();
  for (const one of attention) {
    if (one.subject.tag === '') continue;
    for (const { sheet, row } of one.places) {
      const rows = found.get(sheet) ?? new Map<number, Attention[]>();
      found.set(sheet, rows);
      const there = rows.get(row);
      // Where both tables are one, both places of an entry are the same row.
      if (there?.at(-1) === one) continue;
      if (there) there.push(one);
      else rows.set(row, [one]);
    }
  }
  return found;
}

/** What needs action of a channel. */
function actionsOf(actions: ActionsByRow, { tag, source }: ChannelResult): readonly Attention[] {
  const { sheet, row } = source.channels;
  return (actions.get(sheet)?.get(row) ?? []).filter(({ subject }) => subject.tag === tag);
}

/** What of it is about one threshold: what is about the channel as a whole stands with its danger. */
function actionOf(
  actions: readonly Attention[],
  channel: ChannelResult,
  threshold: ThresholdResult,
): LineAction {
  if (actions.length === 0) return noAction;
  const first = isFirst(channel, threshold);
  const own = actions.filter(({ subject }) =>
    subject.threshold === null ? first : isAbout(subject, threshold),
  );
  return {
    headlines: own.map(({ headline }) => headline).join(' '),
    doNext: [...new Set(own.map(({ doNext }) => doNext))].join(' '),
  };
}

/** The line with which stands what is about the channel as a whole: its plain danger, or the first where it has none. */
function isFirst({ thresholds }: ChannelResult, threshold: ThresholdResult): boolean {
  const danger = thresholds.find(({ name, multiplier }) => name === 'danger' && multiplier === 1);
  return threshold === (danger ?? thresholds[0]);
}

function isAbout({ threshold, multiplier }: About, { name, multiplier: own }: ThresholdResult): boolean {
  return threshold === name && (multiplier ?? 1) === own;
}
