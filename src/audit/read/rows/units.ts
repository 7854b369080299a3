import { cellText, isBlank } from '../../../cells/cell.ts';
import { cellAt } from '../../../cells/sheet.ts';
import type { UnitFault } from '../../model/rules/cellRules.ts';
import { columnLetters } from '../../../cells/address.ts';
import { parseUnit, type Dimension, type Unit } from '../../../units/parse.ts';
import { type FoundColumn, type ReadTable, type UnitColumn } from '../tables/found.ts';
import { looksLikeUnit } from '../tables/header.ts';
import type { ColumnSpec, TableKind } from '../tables/vocabulary.ts';

/** A column whose numbers had no unit of their own and were taken in the unit of the setpoints. */
export interface AssumedUnit {
  readonly table: TableKind;
  readonly column: string;
  readonly unit: string;
  readonly row: number;
}

/** The unit of one cell; `null` where nothing names one; or why it can't be told. */
type UnitRead = Unit | null | { readonly fault: UnitFault };

/** Finds the unit of a column's cell in a given row. Built once per column; a call costs a few look-ups at most. */
export type UnitOf = (row: number) => UnitRead;

/** How the unit of a column's cells is told: by its header, else by the unit columns of its row, else by its meaning. */
export function unitOfColumn(table: ReadTable, column: FoundColumn, spec: ColumnSpec): UnitOf {
  const allowed: readonly Dimension[] = spec.dimensions ?? [];
  const fits = (unit: Unit) => allowed.includes(unit.dimension);
  const usual = spec.usualUnit === undefined ? null : (parseUnit(spec.usualUnit) ?? null);
  const own = column.unit;
  if (own && !fits(own)) {
    return always({ fault: { kind: 'header does not fit', unit: own.text, quantity: spec.name } });
  }
  const strange = own ? undefined : column.remarks.find(looksLikeUnit);
  if (strange !== undefined) return always({ fault: { kind: 'header not known', unit: strange } });
  const sources = unitColumnsFor(table, column, spec);
  if (sources.length === 0) return always(own ?? usual);
  return (row) => {
    const beside = unitBeside(table, row, column, sources, fits);
    if (beside === null || 'fault' in beside) return own ?? beside ?? usual;
    if (own && (own.factor !== beside.factor || own.dimension !== beside.dimension)) {
      return { fault: { kind: 'header against row', ofHeader: own.text, ofRow: beside.text } };
    }
    if (own?.detection && beside.detection && own.detection !== beside.detection) {
      return { fault: { kind: 'header against row', ofHeader: own.detection, ofRow: beside.detection } };
    }
    return own && beside.detection ? { ...own, detection: beside.detection } : (own ?? beside);
  };
}

function always(unit: UnitRead): UnitOf {
  return () => unit;
}

/** Unit columns that speak for a column: those that name it, else, where its meaning does not fix the unit, the bare ones. */
function unitColumnsFor(table: ReadTable, column: FoundColumn, spec: ColumnSpec): readonly UnitColumn[] {
  const named = table.unitColumns.filter((unit) => unit.names.has(column.id));
  if (named.length > 0 || spec.usualUnit !== undefined) return named;
  return table.unitColumns.filter((unit) => unit.names.size === 0);
}

/** The unit column right beside a number speaks for it before any other. */
function nearestFirst(sources: readonly UnitColumn[], column: FoundColumn): readonly UnitColumn[] {
  const beside = sources.find((source) => source.column === column.column + 1);
  return beside ? [beside, ...sources.filter((source) => source !== beside)] : sources;
}

function unitBeside(
  table: ReadTable,
  row: number,
  column: FoundColumn,
  sources: readonly UnitColumn[],
  fits: (unit: Unit) => boolean,
): UnitRead {
  let found: Unit | undefined;
  let unknown: { fault: UnitFault } | undefined;
  for (const source of nearestFirst(sources, column)) {
    const cell = cellAt(table.sheet, row, source.column);
    if (isBlank(cell)) continue;
    const unit = typeof cell === 'string' ? parseUnit(cell) : undefined;
    if (!unit)
      unknown ??= {
        fault: {
          kind: 'cell not known',
          unit: cellText(cell),
          unitColumn: columnLetters(source.column),
        },
      };
    else if (fits(unit)) {
      if (source.column === column.column + 1) return unit;
      if (found && found.factor !== unit.factor)
        return { fault: { kind: 'two in row', units: [found.text, unit.text] } };
      found ??= unit;
    }
  }
  return found ?? unknown ?? null;
}
