import type { Area } from '../../../cells/sheet.ts';
import { shiftedCopies } from '../../formats/shiftFormula.ts';
import { parseArea } from '../read/area.ts';
import type { CellPlace, FormulaPlace, SheetMap } from './sheetMap.ts';

export type FormulaCell = CellPlace & { readonly formula: FormulaPlace };

/** Cells that hold formulas together: an array formula or a table of what-ifs with what it fills. */
export interface FilledArea {
  readonly anchor: FormulaCell;
  readonly area: Area;
  readonly kind: 'array' | 'dataTable';
}

/** The formulas of a sheet that more than one cell has part in. */
export interface FormulaGroups {
  /** The formula of a cell in full, in the form files store; undefined where what it shares is missing. */
  readonly fullFormula: (cell: FormulaCell) => string | undefined;
  /** The cell that holds the formula for all that share it; undefined for a formula that is not shared. */
  readonly masterOf: (cell: FormulaCell) => FormulaCell | undefined;
  /** The other cells that share the formula this cell holds for all of them; none where it holds it for itself. */
  readonly followers: (cell: FormulaCell) => readonly FormulaCell[];
  readonly filled: readonly FilledArea[];
}

/** Takes the groups of a sheet apart (ECMA-376 part 1, section 18.3.1.40). */
export function formulaGroups({ groups }: Pick<SheetMap, 'groups'>): FormulaGroups {
  const shared = new Map<string, FormulaCell[]>();
  const masters = new Map<string, { cell: FormulaCell; copy: (down: number, right: number) => string }>();
  const filled: FilledArea[] = [];
  for (const cell of groups) {
    const { t: type, si: group = '', ref } = cell.formula.attributes;
    if (type === 'array' || type === 'dataTable') {
      filled.push({ anchor: cell, area: parseArea(ref ?? '') ?? onlyCell(cell), kind: type });
    } else if (type === 'shared') {
      const sharing = shared.get(group);
      if (sharing === undefined) shared.set(group, [cell]);
      else sharing.push(cell);
      if (cell.formula.text !== '' && !masters.has(group)) {
        masters.set(group, { cell, copy: shiftedCopies(cell.formula.text) });
      }
    }
  }
  const groupOf = ({ formula }: FormulaCell): string | undefined =>
    formula.attributes['t'] === 'shared' ? (formula.attributes['si'] ?? '') : undefined;
  return {
    filled,
    fullFormula(cell) {
      const group = groupOf(cell);
      if (group === undefined || cell.formula.text !== '') return cell.formula.text;
      const master = masters.get(group);
      return master?.copy(cell.row - master.cell.row, cell.column - master.cell.column);
    },
    masterOf(cell) {
      const group = groupOf(cell);
      return group === undefined ? undefined : masters.get(group)?.cell;
    },
    followers(cell) {
      const group = groupOf(cell);
      if (group === undefined || masters.get(group)?.cell.start !== cell.start) return [];
      return (shared.get(group) ?? []).filter((other) => other.start !== cell.start);
    },
  };
}

export function overlaps(one: Area, other: Area): boolean {
  return (
    one.left <= other.right && other.left <= one.right && one.top <= other.bottom && other.top <= one.bottom
  );
}

export function isInside({ top, left, bottom, right }: Area, row: number, column: number): boolean {
  return row >= top && row <= bottom && column >= left && column <= right;
}

function onlyCell({ row, column }: FormulaCell): Area {
  return { top: row, left: column, bottom: row, right: column };
}

/** Items by key, keys in the order of their first item and items in theirs. */
export function grouped<Key, Item>(
  items: Iterable<Item>,
  keyOf: (item: Item) => Key,
): ReadonlyMap<Key, readonly Item[]> {
  const groups = new Map<Key, Item[]>();
  for (const item of items) {
    const key = keyOf(item);
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [item]);
    else group.push(item);
  }
  return groups;
}
