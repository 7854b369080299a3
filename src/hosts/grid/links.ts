import type { ICellData, Nullable } from '@univerjs/core';
import type { ModelRow, SheetModel } from '../../sheets/model.ts';
import type { CellPlace } from '../port/port.ts';

/** What a cell keeps that leads elsewhere; the grid takes it along wherever it moves the cell. */
export function keptLink(to: CellPlace): NonNullable<ICellData['custom']> {
  return { link: to };
}

/** Where a cell leads; `undefined` where it leads nowhere or shows nothing to follow. */
export function linkOf(cell: Nullable<ICellData>): CellPlace | undefined {
  if (!cell || cell.v === undefined || cell.v === null || cell.v === '') return undefined;
  return cell.custom?.['link'] as CellPlace | undefined;
}

/** A row whose links to sheets of its own run name them as the workbook does. */
export function withLinkedNames(row: ModelRow, nameOf: (wanted: string) => string): ModelRow {
  if (!row.links) return row;
  const links = row.links.map((link) =>
    link.to.ours ? { ...link, to: { ...link.to, sheet: nameOf(link.to.sheet) } } : link,
  );
  return { ...row, links };
}

/** The same sheet, whose rows are changed as they are made. */
export function withRows(model: SheetModel, change: (row: ModelRow) => ModelRow): SheetModel {
  return {
    ...model,
    *rows() {
      for (const row of model.rows()) yield change(row);
    },
  };
}
