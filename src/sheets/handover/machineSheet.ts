import { shortId } from '../../audit/evidence/fingerprint.ts';
import type { Report } from '../../audit/model/report.ts';
import { wide } from '../look/layout.ts';
import { timeText } from '../auditedLine.ts';
import type { ModelRow, SheetModel } from '../model.ts';
import { formulaList } from '../formulaList.ts';
import { headline } from '../summary/counts.ts';
import { titleOf } from '../titles.ts';
import { leftSentence } from './asLeft.ts';
import { furtherFindings } from './attention.ts';
import { channelBlocks, shownInFull } from './channelBlocks.ts';
import { clipped } from './clipped.ts';
import { closingBlock, stepBlocks } from './closingBlocks.ts';
import { barChart, drawingsOf, drawnCells, firstDrawnColumn, rowsOf, type Drawing } from './drawings.ts';
import { interimBlocks, noInterim } from './interimBlocks.ts';
import { machineName, type Machine } from '../machines.ts';
import { machineNeedsAction } from './needsAction.ts';
import type { Place } from './numberLines.ts';
import { lastColumn, line, paged, space, text, widths, type Block, type Page } from './page.ts';
import { notJudgedBlocks, unaffectedBlocks } from './restBlocks.ts';
import { styles } from './styles.ts';
import { timeBlocks } from './timeBlocks.ts';
import { groupBlocks, idleTripBlocks } from './tripBlocks.ts';

/** The hand-over sheet of one machine: how things stand, channel by channel, what to do, and lines to sign on. */
export function machineSheet(machine: Machine, report: Report, name: string): SheetModel {
  const { place, all: formulas } = formulaList();
  const drawings = drawingsOf(shownInFull(machine));
  const [first, ...more] = drawings.map((drawing) => ({ drawing, block: roomFor(drawing) }));
  const blocks: Block[] = [
    headBlock(machine, report),
    ...(first ? [first.block] : []),
    ...(machineNeedsAction(machine) ? stepBlocks(machine) : []),
    ...bodyBlocks(machine, report, place),
    ...more.map(({ block }) => block),
    closingBlock(report),
  ];
  const page = paged(blocks);
  const drawn = [...(first ? [first] : []), ...more].map(({ drawing, block }) => ({
    drawing,
    top: 2 + blocks.slice(0, blocks.indexOf(block)).flat().length,
  }));
  const rows = withDrawnCells(page, drawn, place);
  return {
    name,
    widths: [...widths, 3, ...Array.from({ length: firstDrawnColumn - lastColumn + 1 }, () => 12)],
    styles,
    formulas,
    rowCount: rows.length,
    rows: () => rows,
    merges: page.merges,
    charts: drawn.map(({ drawing, top }) => barChart(drawing, top, rowsOf(drawing))),
    print: {
      landscape: false,
      footer: `${clipped(machineName(machine), 40)} · Advisory only: see the caution on the first page · Audit ${shortId(report)}`,
      area: { top: 1, left: 1, bottom: rows.length, right: lastColumn },
      newPages: page.newPages,
    },
  };
}

function headBlock(machine: Machine, report: Report): Block {
  const title = clipped(machineName(machine));
  return [
    { entries: [wide(titleOf('hand-over', report), 'mark', lastColumn)] },
    { entries: [wide(title, 'machine', lastColumn)] },
    line(`State of its protection as audited on ${timeText(report.generated)}.`, 'remark'),
    space,
    ...text(standing(machine), 'standing'),
    space,
    ...text(report.caution, 'caution'),
  ];
}

/** One sentence that says how things stand. */
export function standing(machine: Machine): string {
  const [found, left] = [headline(machine.summary), leftSentence(machine.channels)];
  const stands = left === '' ? found : `As found: ${found.charAt(0).toLowerCase()}${found.slice(1)}${left}`;
  if (machineNeedsAction(machine)) return stands;
  const remarked = machine.channels.some((channel) => furtherFindings(channel).length > 0);
  return `${stands} As far as audited, ${remarked ? 'no threshold calls for action, but there are remarks to look at' : 'there is nothing to report'}.`;
}

function bodyBlocks(machine: Machine, { policy }: Report, place: Place): Block[] {
  if (!machineNeedsAction(machine)) return [...unaffectedBlocks(machine), ...groupBlocks(machine, policy)];
  const interim = interimBlocks(machine, place);
  return [
    ...channelBlocks(machine, policy, place),
    ...unaffectedBlocks(machine),
    ...idleTripBlocks(machine),
    ...groupBlocks(machine, policy),
    ...timeBlocks(machine),
    ...(interim.length > 0 ? interim : shownInFull(machine).length > 0 ? [noInterim] : []),
    ...notJudgedBlocks(machine),
  ];
}

/** Empty rows for a drawing, with room before it. */
function roomFor(drawing: Drawing): Block {
  return [space, ...Array.from({ length: rowsOf(drawing) }, () => ({ entries: [], height: 15 }))];
}

function withDrawnCells(
  page: Page,
  drawn: readonly { readonly drawing: Drawing; readonly top: number }[],
  place: Place,
): readonly ModelRow[] {
  const rows = [...page.rows];
  for (const { drawing, top } of drawn) {
    drawnCells(drawing, page, place).forEach((cells, index) => {
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
