import type { AnsweredAt, CellError } from '../../hosts/grid/gridFunction.ts';
import { type Grid, openBook, shownContent } from '../../hosts/grid/grid.ts';
import { isErrorCode } from '../../hosts/grid/storedText.ts';

/** Why cells show an error, as the functions in them said. */
export interface Reasons {
  readonly heard: AnsweredAt;
  /** The reason for the error in a cell, row and column from 0; empty where none is known. */
  at(sheetId: string, row: number, column: number): string;
}

type Asked = readonly [sheetId: string, row: number, column: number];

/** Remembers the messages of errors, cell by cell, also of those that a formula fills beside its own. */
export function rememberReasons(): Reasons {
  const byCell = new Map<string, string>();
  const key = (...asked: Asked): string => asked.join(' ');
  const keep = (value: number | string | CellError, ...asked: Asked): void => {
    if (typeof value === 'object' && value.message !== '') byCell.set(key(...asked), value.message);
    else byCell.delete(key(...asked));
  };
  return {
    heard: (sheetId, row, column, answer) => {
      if (typeof answer !== 'object' || 'code' in answer) {
        keep(answer, sheetId, row, column);
        return;
      }
      answer.forEach((values, down) => {
        values.forEach((value, across) => {
          keep(value, sheetId, row + down, column + across);
        });
      });
    },
    at: (...asked) => byCell.get(key(...asked)) ?? '',
  };
}

/** Calls back with the reason for the error in the first selected cell, empty where it shows none. */
export function onReason(grid: Grid, reasons: Reasons, show: (text: string) => void): void {
  grid.api.addEvent(grid.api.Event.CommandExecuted, ({ id }) => {
    if (id !== 'sheet.operation.set-selections') return;
    const front = openBook(grid).getActiveSheet();
    const range = front.getSelection()?.getActiveRange()?.getRange();
    if (!range) return;
    const { startRow, startColumn } = range;
    const shown = shownContent(grid, front.getSheet())(startRow, startColumn);
    const text = shown ? shown.v : undefined;
    const isError = typeof text === 'string' && isErrorCode(text);
    show(isError ? reasons.at(front.getSheetId(), startRow, startColumn) : '');
  });
}
