import type { Report } from '../../audit/model/report.ts';
import { cell } from '../cells.ts';
import { heightOf } from '../look/lines.ts';
import { footerOf, leftOut, roomFor } from '../look/print.ts';
import { shadesFor, verdictShades } from '../look/shades.ts';
import { frameStyles, levelStyles } from '../look/styles.ts';
import { linkAt, sourceOf } from '../links.ts';
import type { ModelCell, ModelRow, SheetModel } from '../model.ts';
import { sheetNames, tableNames, titleOf } from '../titles.ts';
import { columnNumber, columns, printedColumns, templateOf, templates } from './columns.ts';
import type { AsLeftLine } from './lines.ts';

const headerRow = 4;
const wrapping = columns.map(({ style, width }) => (style === 'wrapped' ? width : 0));
/** Columns of words, whose headers stand at the left. */
const worded = new Set<unknown>(['text', 'strongLink', 'wrapped']);

const reading =
  'Channels measured again after a correction count as left everywhere; here is what was found, beside it. What was not measured again stays as found, but for the zero of a position, of which nothing is known then. Late from is the last day known to be good.';

/** The sheet of history: one row a threshold that was measured again, as found beside as left; what is still late first. */
export function asLeftSheet(report: Report, lines: readonly AsLeftLine[]): SheetModel {
  const shown = roomFor(lines.length, headerRow);
  const lastRow = headerRow + shown;
  const below = (id: string) => {
    const column = columnNumber(id);
    return { top: headerRow + 1, left: column, bottom: lastRow, right: column };
  };
  return {
    name: sheetNames['as found and as left'],
    widths: columns.map(({ width }) => width),
    styles: { ...frameStyles, ...levelStyles },
    formulas: templates,
    rowCount: lastRow,
    *rows() {
      yield { height: 24, cells: [cell(titleOf('as found and as left', report), 'title')] };
      yield { height: 45, cells: [cell(report.caution + leftOut(lines.length, shown), 'caution')] };
      yield { cells: [cell(reading, 'subtitle')] };
      yield {
        height: 45,
        cells: columns.map(({ header, style }) =>
          cell(header, worded.has(style) ? 'header' : 'headerCentred'),
        ),
      };
      for (const line of lines.slice(0, shown)) yield lineRow(line);
    },
    freeze: { rows: headerRow, columns: 1 },
    ...(shown > 0 && {
      table: {
        name: tableNames['as found and as left'],
        area: { top: headerRow, left: 1, bottom: lastRow, right: columns.length },
      },
    }),
    merges: [{ top: 2, left: 1, bottom: 2, right: printedColumns }],
    shades: shadesFor(below('goesOn'), { yes: verdictShades.late }),
    print: {
      landscape: true,
      repeatRows: { from: headerRow, to: headerRow },
      footer: footerOf(report),
      area: { top: 1, left: 1, bottom: lastRow, right: printedColumns },
    },
  };
}

function lineRow(line: AsLeftLine): ModelRow {
  const cells = columns.map(({ id, value, style, applies }): ModelCell | undefined => {
    const found = value(line);
    const look = typeof style === 'string' ? style : style(line);
    const formula = applies?.(line) === false ? undefined : templateOf.get(id);
    return formula === undefined ? cell(found, look) : { value: found, style: look, formula };
  });
  const texts = columns.map(({ value }, index) => ((wrapping[index] ?? 0) > 0 ? String(value(line)) : ''));
  const links = linkAt(columnNumber('tag'), sourceOf(line.channel.source.channels));
  return { height: heightOf(texts, wrapping), cells, links };
}
