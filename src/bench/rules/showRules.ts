import { BooleanNumber, type Injector, type IStyleData, type Worksheet } from '@univerjs/core';
import type {} from '@univerjs/sheets-ui/facade';
import { IRenderManagerService, type Spreadsheet } from '@univerjs/engine-render';
import { RegisterOtherFormulaService } from '@univerjs/engine-formula';
import { INTERCEPTOR_POINT, SheetInterceptorService } from '@univerjs/sheets';
import type { ViewRule, ViewShade } from '../../hosts/file/view/types.ts';
import { type Grid, openBook, shownContent, styleOf } from '../../hosts/grid/grid.ts';
import { onBookChanged } from '../../hosts/grid/changes.ts';
import { rulesOf as rulesKept } from '../../hosts/grid/tables.ts';
import { cellContent } from '../save/cellContent.ts';
import { type SheetRules, sheetRules } from './sheetRules.ts';

/** Draws all that is seen of a sheet: looks of cells are remembered until something of their own changes. */
function drawAnew(
  injector: Injector,
  front: ReturnType<ReturnType<typeof openBook>['getActiveSheet']>,
): void {
  const drawing = injector.get(IRenderManagerService).getRenderById(front.getSheet().getUnitId());
  front.getSkeleton()?.resetCache();
  (drawing?.mainComponent as Spreadsheet | null | undefined)?.makeForceDirty(true);
}

/** Rows and columns behind the last ones in use to which rules reach that have to be calculated. */
const spare = 20;

/**
 * Shows the conditional formats that are kept beside sheets: each drawn cell is asked what its rules say now, nothing is
 * stored in cells. The returned function stops it.
 */
export function showRules(grid: Grid, injector: Injector): () => void {
  const bySheet = new Map<string, { readonly kept: readonly ViewRule[]; readonly rules: SheetRules }>();
  const rulesOf = (sheet: Worksheet): SheetRules | undefined => {
    const id = sheet.getSheetId();
    const kept = rulesKept(sheet);
    const known = bySheet.get(id);
    if (known?.kept === kept) return known.rules;
    known?.rules.stop();
    bySheet.delete(id);
    if (kept.length === 0) return undefined;
    const rules = sheetRules(injector, ruledSheet(grid, sheet), kept);
    bySheet.set(id, { kept, rules });
    return rules;
  };
  injector.get(SheetInterceptorService).intercept(INTERCEPTOR_POINT.CELL_CONTENT, {
    handler: (cell, { worksheet, workbook, row, col }, next) => {
      const shade = rulesOf(worksheet)?.shadeAt(row + 1, col + 1);
      if (!shade) return next(cell);
      return next({ ...cell, s: { ...styleOf(workbook, cell), ...shadeStyle(shade) } });
    },
  });

  let waiting: ReturnType<typeof setTimeout> | undefined;
  const drawSoon = (): void => {
    clearTimeout(waiting);
    waiting = setTimeout(() => {
      const front = openBook(grid).getActiveSheet();
      if (bySheet.has(front.getSheetId())) drawAnew(injector, front);
    }, 30);
  };
  onBookChanged(grid, () => {
    for (const { rules } of bySheet.values()) rules.changed();
    drawSoon();
  });
  injector.get(RegisterOtherFormulaService).formulaResult$.subscribe(drawSoon);
  return () => {
    clearTimeout(waiting);
    for (const { rules } of bySheet.values()) rules.stop();
    bySheet.clear();
  };
}

function ruledSheet(grid: Grid, sheet: Worksheet): Parameters<typeof sheetRules>[1] {
  return {
    unitId: sheet.getUnitId(),
    sheetId: sheet.getSheetId(),
    lastRow: sheet.getLastRowWithContent() + 1 + spare,
    lastColumn: sheet.getLastColumnWithContent() + 1 + spare,
    valueAt: (row, column) => {
      const { value, error } = cellContent(shownContent(grid, sheet)(row - 1, column - 1));
      return error ? undefined : value;
    },
  };
}

function shadeStyle({ bold, italic, underline, strike, color, fill }: ViewShade): IStyleData {
  const yes = BooleanNumber.TRUE;
  return {
    ...(bold && { bl: yes }),
    ...(italic && { it: yes }),
    ...(underline && { ul: { s: yes } }),
    ...(strike && { st: { s: yes } }),
    ...(color !== undefined && { cl: { rgb: `#${color}` } }),
    ...(fill !== undefined && { bg: { rgb: `#${fill}` } }),
  };
}
