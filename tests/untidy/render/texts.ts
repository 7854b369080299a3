import type { Cell } from '../../../src/cells/cell.ts';
import type { Column, Draft, Table } from '../draft.ts';

/** A header with its unit, as the table says units. */
export function headerText({ header, unit, unitInGroup }: Column, { unitPlace }: Table): string {
  return unitInGroup ? header : withUnit(header, unit, unitPlace);
}

/** The merged header above a column. */
export function groupText({ group, unit, unitInGroup }: Column, { unitPlace }: Table): string | null {
  return group === null || !unitInGroup ? group : withUnit(group, unit, unitPlace);
}

function withUnit(text: string, unit: string | null, place: Table['unitPlace']): string {
  if (unit === null) return text;
  switch (place) {
    case 'header':
      return `${text} (${unit})`;
    case 'brackets':
      return `${text} [${unit}]`;
    case 'words':
      return `${text} ${unit}`;
    case 'row':
    case 'column':
    case 'cell':
    case 'elsewhere':
      return text;
  }
}

/** A cell as this workbook writes its numbers. */
export function written(cell: Cell, column: Column, table: Table, draft: Draft): Cell {
  if (typeof cell !== 'number') return cell;
  if (column.meaning === 'other') return cell;
  const comma = draft.numbers === 'text with comma';
  const text = comma ? String(cell).replace('.', ',') : String(cell);
  if (table.unitPlace === 'cell' && column.unit !== null) return `${text} ${column.unit}`;
  return draft.numbers === 'numbers' ? cell : text;
}
