import type { Injector, IRange, Nullable } from '@univerjs/core';
import { CellValueType, type ICellData } from '@univerjs/core';
import { RegisterOtherFormulaService } from '@univerjs/engine-formula';
import type { Area } from '../../cells/sheet.ts';
import { shiftedCopies } from '../../hosts/formats/shiftFormula.ts';
import { mergedRanges } from '../../hosts/grid/frame.ts';

/** A formula that the grid's engine keeps calculated for every cell of some areas. */
export interface Calculated {
  /** Whether it is true for a cell, row and column from 1; false too for as long as nothing is calculated. */
  holds(row: number, column: number): boolean;
  stop(): void;
}

/** Has a formula calculated whose references are those for the top left cell of the first area. */
export function calculated(
  injector: Injector,
  place: { readonly unitId: string; readonly sheetId: string },
  formula: string,
  areas: readonly Area[],
): Calculated {
  const engine = injector.get(RegisterOtherFormulaService);
  const { unitId, sheetId } = place;
  const copy = shiftedCopies(formula.replace(/^=/, ''));
  const [first] = areas;
  const ids = mergedRanges(areas).map((range, index) => {
    const area = areas[index] ?? first;
    const moved = area && first ? copy(area.top - first.top, area.left - first.left) : formula;
    return { range, id: engine.registerFormulaWithRange(unitId, sheetId, `=${moved}`, [range]) };
  });
  return {
    holds: (row, column) =>
      ids.some(({ range, id }) => {
        if (!within(range, row - 1, column - 1)) return false;
        const results = engine.getFormulaValueSync(unitId, sheetId, id)?.result;
        return isTrue(results?.[row - 1 - range.startRow]?.[column - 1 - range.startColumn]?.[0]?.[0]);
      }),
    stop: () => {
      engine.deleteFormula(
        unitId,
        sheetId,
        ids.map(({ id }) => id),
      );
    },
  };
}

function within({ startRow, endRow, startColumn, endColumn }: IRange, row: number, column: number): boolean {
  return row >= startRow && row <= endRow && column >= startColumn && column <= endColumn;
}

/** A truth value, or a number other than 0. */
function isTrue(result: Nullable<ICellData>): boolean {
  if (!result || result.t === CellValueType.STRING || result.t === CellValueType.FORCE_STRING) return false;
  return result.v === true || result.v === 'TRUE' || (typeof result.v === 'number' && result.v !== 0);
}
