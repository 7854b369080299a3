import type { Injector } from '@univerjs/core';
import { CellAlertManagerService } from '@univerjs/sheets-ui';

/** The reason for the error in a cell, sheet by its id, row and column from 0; empty where none is known. */
export type ReasonAt = (sheetId: string, row: number, column: number) => string;

const title = 'Why this cell shows an error';

/** Has the card beside a cell that shows an error say the function's own reason; where none is known it says what it said. */
export function sayReasons(injector: Injector, reasonAt: ReasonAt): void {
  const cards = injector.get(CellAlertManagerService);
  const show = cards.showAlert.bind(cards);
  cards.showAlert = (card) => {
    const { subUnitId, row, col } = card.location;
    const reason = reasonAt(subUnitId, row, col);
    show(reason === '' ? card : { ...card, title, message: reason });
  };
}
