import { FileRefused } from '../zip/refused.ts';

/** Books `count` more cells; throws FileRefused once more have been booked than a workbook may have. */
export type SpendCells = (count: number) => void;

/** A budget of `most` cells for all sheets together, since each sheet of a hostile file could stay just below any limit of its own. */
export function cellBudget(most: number): SpendCells {
  let spent = 0;
  return (count) => {
    spent += count;
    if (spent > most) {
      throw new FileRefused(
        `The workbook takes up more than ${most.toLocaleString('en')} cells. Delete sheets, rows and columns that are not needed, or split it.`,
      );
    }
  };
}
