import type { Area, SheetTable } from '../../cells/sheet.ts';
import type { ViewRule } from '../../hosts/file/view/types.ts';

/** What the grid keeps beside the cells of a sheet. */
export interface KeptBeside {
  readonly tables?: readonly SheetTable[];
  readonly rules?: readonly ViewRule[];
}

/** How one step moves things of a sheet. */
export interface Move {
  /** Where an area lies afterwards; `null` where nothing is left of it. */
  readonly area: (area: Area) => Area | null;
  /** A formula, without `=`, with its references where they lead afterwards. */
  readonly formula: (formula: string) => string;
}

/**
 * What is kept beside a sheet after rows, columns or cells moved. A table whose header row is gone is none any more: its
 * cells are then read as a plain range.
 */
export function movedBeside<Kept extends KeptBeside>(kept: Kept, move: Move): Kept {
  const { tables, rules } = kept;
  return {
    ...kept,
    ...(tables && { tables: tables.flatMap((table) => movedTable(table, move)) }),
    ...(rules && { rules: rules.flatMap((rule) => movedRule(rule, move)) }),
  };
}

function movedTable(table: SheetTable, move: Move): SheetTable[] {
  const { area, headerRow, totalsRow } = table;
  const moved = move.area(area);
  const left = (row: number): boolean => move.area({ ...area, top: row, bottom: row }) !== null;
  if (!moved || (headerRow && !left(area.top))) return [];
  return [{ ...table, area: moved, totalsRow: totalsRow && left(area.bottom) }];
}

function movedRule(rule: ViewRule, move: Move): ViewRule[] {
  const areas = rule.areas.flatMap((area) => move.area(area) ?? []);
  return areas.length === 0 ? [] : [{ ...rule, areas, formulas: rule.formulas.map(move.formula) }];
}
