import type { ColumnMap } from '../../audit/model/columnMap.ts';
import { asPart, type Steps } from '../../audit/model/steps.ts';
import type { TableKind } from '../../audit/read/tables/vocabulary.ts';
import type { TidyList } from '../../audit/read/tidy/tidyList.ts';
import { tidyListOf } from '../../audit/read/tidy/tidyListOf.ts';
import { understand } from '../../audit/read/understand/understand.ts';
import type { Place } from '../../audit/read/understand/blocks/block.ts';
import { cellAt, type Workbook } from '../../cells/sheet.ts';
import { formulaList } from '../formulaList.ts';
import { footerOf, roomFor, leftOut } from '../look/print.ts';
import { frameStyles } from '../look/styles.ts';
import { tones } from '../look/palette.ts';
import type { ModelRow, SheetModel } from '../model.ts';
import { sheetNames, titleOf } from '../titles.ts';
import { columnsFor } from './tidyColumns.ts';
import { cellsOf, type TextAt } from './tidyCells.ts';

const titles = { channels: 'your list, channels', settings: 'your list, settings' } as const;

/** Rows above the first channel: title, two lines of advice, a blank one, headers. */
const above = 5;

/**
 * What is understood of a workbook, with what a person answered, as the two tables of the standard shape: one row a channel,
 * each cell a link to the cell of the user's own that holds it. Both begin with the mark of result sheets, so that an audit
 * of the workbook goes on reading the user's own lists. Goes step by step, so that a screen stays alive.
 */
export function* tidySheetsInSteps(workbook: Workbook, map: ColumnMap): Steps<number, readonly SheetModel[]> {
  const understanding = yield* asPart(understand(workbook, map), () => 0);
  const list = yield* asPart(tidyListOf(understanding, workbook.sheets), () => 1);
  return tidySheets(list, workbook);
}

/** The two tables of a list that was understood in a workbook. */
export function tidySheets(list: TidyList, { sheets }: Workbook): readonly SheetModel[] {
  const byName = new Map(sheets.map((sheet) => [sheet.name, sheet]));
  const textAt = ({ sheet: name, row, column }: Place): string => {
    const sheet = byName.get(name);
    const cell = sheet ? cellAt(sheet, row, column) : null;
    return typeof cell === 'string' ? cell : '';
  };
  return (['channels', 'settings'] as const).map((kind) => tidySheet(kind, list, textAt));
}

function tidySheet(kind: TableKind, list: TidyList, textAt: TextAt): SheetModel {
  const columns = columnsFor(kind, list);
  const channels = list.channels.slice(0, roomFor(list.channels.length, above));
  const formulas = formulaList();
  const rows: ModelRow[] = channels.map((channel) => ({
    cells: cellsOf(channel, kind, columns, { formulas, textAt }),
  }));
  const note = leftOut(list.channels.length, channels.length);
  const head: readonly ModelRow[] = [
    { cells: [{ value: titleOf(titles[kind]), style: 'title' }] },
    { cells: [{ value: `${linked}${note}`, style: 'subtitle' }] },
    { cells: [{ value: toKeep, style: 'subtitle' }] },
    { cells: [] },
    { height: 48, cells: columns.map(({ header }) => ({ value: header, style: 'header' })) },
  ];
  return {
    name: sheetNames[titles[kind]],
    widths: columns.map(({ width }) => width),
    styles: {
      ...frameStyles,
      date: { numberFormat: 'yyyy-mm-dd', valign: 'top' },
      typed: { fill: tones.caution, valign: 'top' },
      typedDate: { fill: tones.caution, numberFormat: 'yyyy-mm-dd', valign: 'top' },
    },
    formulas: formulas.all,
    rowCount: head.length + rows.length,
    *rows() {
      yield* head;
      yield* rows;
    },
    freeze: { rows: above, columns: 1 },
    filter: { top: above, left: 1, bottom: above + rows.length, right: columns.length },
    print: { landscape: true, repeatRows: { from: above, to: above }, footer: footerOf() },
  };
}

const linked = 'Each cell is a link to a cell of your own list, which audits go on reading.';
const toKeep =
  'Shaded: taken from a text, another unit or a share; such a cell does not follow its source, named in the last column.';
