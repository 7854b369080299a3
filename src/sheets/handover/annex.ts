import { shortId } from '../../audit/evidence/fingerprint.ts';
import type { Report, ChannelResult } from '../../audit/model/report.ts';
import type { ThresholdResult, NotJudged } from '../../audit/model/threshold.ts';
import { timeText } from '../auditedLine.ts';
import { formulaList } from '../formulaList.ts';
import { wide } from '../style/layout.ts';
import { machineName, type Machine } from '../machines.ts';
import type { ModelRow, SheetModel } from '../model.ts';
import { titleOf } from '../titles.ts';
import {
  heading,
  lastColumn,
  line,
  paged,
  space,
  text,
  widths,
  type AnnexPages,
  type Block,
} from './annexPages.ts';
import {
  barChart,
  drawingsOf,
  drawnCells,
  firstDrawnColumn,
  roomFor,
  rowsOf,
  type Drawing,
} from './barDrawings.ts';
import { channelBlocks, channelsInDetail } from './channelBlocks.ts';
import { clipped, listed, type PageLine } from './paper.ts';
import { interimBlocks } from './interimBlocks.ts';
import { numberColumns, type Place } from './numberLines.ts';
import { policySentence } from './pageFrame.ts';
import { styles } from './styles.ts';
import { timeBlocks } from './timeBlocks.ts';
import { voteBlocks } from './voteBlocks.ts';
import { cell } from '../cells.ts';
import { shadeOf, signOf } from './signs.ts';

const headers: PageLine = {
  entries: [
    cell('Sign', 'labelCentred'),
    cell('No.', 'labelCentred'),
    wide('What is wrong', 'labelLeft', 6),
    wide('What to do', 'labelLeft', 4),
  ],
};

const words: Readonly<Record<NotJudged, string>> = {
  reach: 'whether the chain can follow that far: no gap voltage is given',
  uncertainty: 'how sure the measured sensitivity is: no uncertainty is given, the value alone decided',
  curve: 'the curve of the calibration record at the operating gap: no gap voltage or zero is given',
  limit: 'whether the danger acts before the machine’s limit: no limit is given',
  'full scale': 'whether the monitor can show the setpoints: no full scale is given',
};

/** Where on an annex the numbers of thresholds stand. */
export interface AnnexRows {
  /** `$C$12`; `undefined` where the annex has no line for the threshold. */
  cellOf(threshold: ThresholdResult, column: keyof typeof numberColumns): string | undefined;
}

/** The annex of one machine for engineers: all that needs action, and all the numbers behind the control-room page. */
export function annexOf(
  machine: Machine,
  report: Report,
  name: string,
): { readonly sheet: SheetModel; readonly rows: AnnexRows } {
  const { place, all: formulas } = formulaList();
  const told = channelsInDetail(machine);
  const drawings = drawingsOf(told).map((drawing) => ({ drawing, block: roomFor(drawing) }));
  const blocks: Block[] = [
    headBlock(machine, report),
    ...actionBlocks(machine),
    ...channelBlocks(machine, report.policy, place),
    ...drawings.map(({ block }) => block),
    ...voteBlocks(machine),
    ...timeBlocks(told),
    ...interimBlocks(machine.channels, place),
    ...notJudgedBlocks(machine.channels),
    closingBlock(report),
  ];
  const pages = paged(blocks);
  const drawn = drawings.map(({ drawing, block }) => ({
    drawing,
    top: 2 + blocks.slice(0, blocks.indexOf(block)).flat().length,
  }));
  const rows = withDrawnCells(pages, drawn, place);
  const sheet: SheetModel = {
    name,
    widths: [...widths, 3, ...Array.from({ length: firstDrawnColumn + 2 - lastColumn - 1 }, () => 12)],
    styles,
    formulas,
    rowCount: rows.length,
    rows: () => rows,
    merges: pages.merges,
    charts: drawn.map(({ drawing, top }) => barChart(drawing, top, rowsOf(drawing))),
    print: {
      landscape: false,
      footer: `${clipped(machineName(machine), 40)}, annex · Advisory only: see the caution on the first page · Audit ${shortId(report)}`,
      area: { top: 1, left: 1, bottom: rows.length, right: lastColumn },
      newPages: pages.newPages,
    },
  };
  return {
    sheet,
    rows: {
      cellOf: (threshold, column) => {
        const row = pages.rowOf.get(threshold);
        return row === undefined ? undefined : `$${numberColumns[column]}$${row}`;
      },
    },
  };
}

function headBlock(machine: Machine, report: Report): Block {
  return [
    { entries: [wide(titleOf('hand-over', report), 'mark', lastColumn)] },
    { entries: [wide(`${clipped(machineName(machine))}: annex for engineers`, 'machine', lastColumn)] },
    line(`Its protection as audited on ${timeText(report.generated)} · audit ${shortId(report)}`, 'remark'),
    space,
    ...text(report.caution, 'caution'),
  ];
}

function closingBlock({ policy, version, generated, input, fingerprint }: Report): Block {
  return [
    ...heading('What it was made from'),
    ...text(
      `Made by Tripdrift, rules version ${version}, on ${timeText(generated)}, from ${input}.`,
      'remark',
    ),
    line(policySentence(policy), 'remark'),
    line(`Fingerprint of the inputs, SHA-256: ${fingerprint.inputs}`, 'remark'),
  ];
}

function withDrawnCells(
  pages: AnnexPages,
  drawn: readonly { readonly drawing: Drawing; readonly top: number }[],
  place: Place,
): readonly ModelRow[] {
  const rows = [...pages.rows];
  for (const { drawing, top } of drawn) {
    drawnCells(drawing, pages, place).forEach((cells, index) => {
      const row = rows[top - 1 + index];
      if (row)
        rows[top - 1 + index] = {
          ...row,
          cells: [...Array.from({ length: firstDrawnColumn - 1 }, () => undefined), ...cells],
        };
    });
  }
  return rows;
}

/** What was not judged for want of evidence that is no more than useful, and of which channels. */
function notJudgedBlocks(channels: readonly ChannelResult[]): Block[] {
  const tags = new Map<NotJudged, Set<string>>();
  for (const { tag, thresholds } of channels) {
    for (const { notJudged } of thresholds)
      for (const what of notJudged) tags.set(what, (tags.get(what) ?? new Set()).add(tag));
  }
  const lines = [...tags].flatMap(([what, own]) => text(`${listed([...own])}: ${words[what]}.`));
  return lines.length === 0 ? [] : [[...heading('What was not judged'), ...lines]];
}

/** All that needs action on a machine, gravest first, with what to do: what has no room on the control-room page stands here. */
function actionBlocks({ attention }: Machine): Block[] {
  const title = heading(`What needs action: ${attention.length === 0 ? 'nothing' : attention.length}`);
  if (attention.length === 0) return [[...title, line('Nothing of this machine needs action.')]];
  const lines = attention.map((entry, index): PageLine => ({
    entries: [
      cell(signOf(entry), shadeOf(entry.code)),
      cell(index + 1, 'count'),
      wide(clipped(entry.headline, 900), entry.severity === 'critical' ? 'warned' : 'wrapped', 6),
      wide(clipped(entry.doNext, 500), 'wrapped', 4),
    ],
  }));
  const [first, ...rest] = lines;
  return [[...title, headers, ...(first ? [first] : [])], ...rest.map((one): Block => [one])];
}
