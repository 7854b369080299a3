import { CellValueType, type Injector } from '@univerjs/core';
import { AFTER_CELL_EDIT, INTERCEPTOR_POINT, SheetInterceptorService } from '@univerjs/sheets';
import { plainTextOf } from '../../hosts/grid/tables.ts';
import { writtenText } from '../../hosts/grid/read/written.ts';
import { plainNumber } from './plainNumber.ts';

/** Runs before the grid's own reading of what is typed, which knows the decimal point alone. */
const first = 1_000;

/** Shows and takes numbers of a file of plain text as the file writes them, decimal comma or point. */
export function showPlainNumbers(injector: Injector): void {
  const interceptors = injector.get(SheetInterceptorService);
  interceptors.intercept(INTERCEPTOR_POINT.CELL_CONTENT, {
    handler: (cell, _place, next) => {
      const text = cell ? writtenText(cell) : undefined;
      return next(text === undefined ? cell : { ...cell, v: text, t: CellValueType.NUMBER });
    },
  });
  interceptors.writeCellInterceptor.intercept(AFTER_CELL_EDIT, {
    priority: first,
    handler: (cell, { worksheet }, next) => {
      const { plainText } = plainTextOf(worksheet);
      const number = plainText && typeof cell?.v === 'string' && plainNumber(cell.v, plainText);
      return number ? { ...cell, ...number } : next(cell);
    },
  });
}
