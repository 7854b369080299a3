import type { SheetModel } from '../../../../sheets/model.ts';
import { declaredNames } from './contentTypes.ts';
import type { OpenWorkbook } from './openWorkbook.ts';
import { folderOf, relationshipsOf } from './relationships.ts';

/** Names, free in the package, of the parts that will be added. */
export interface PlannedParts {
  readonly sheets: readonly PlannedSheet[];
  /** Set where the workbook has no style sheet and needs one. */
  readonly styles: string | undefined;
}

export interface PlannedSheet {
  readonly sheet: string;
  /** Set where the sheet has charts. */
  readonly drawing: string | undefined;
  readonly charts: readonly string[];
  /** Set where the sheet has a table. */
  readonly table: string | undefined;
}

/** Chooses part names beside the workbook part; the package compares names without case. */
export function plannedParts(
  { archive, contentTypes, workbook, styles }: OpenWorkbook,
  sheets: readonly Pick<SheetModel, 'charts' | 'table'>[],
): PlannedParts {
  const declared = new Set(declaredNames(contentTypes));
  const folder = folderOf(workbook.entry.name);
  const isTaken = (name: string): boolean =>
    archive.get(name) !== undefined || declared.has(name.toLowerCase());
  /** Free names in order; left-over relationships of a part that is gone would become those of the new one. */
  const freeIn = (stem: string) => {
    let number = 0;
    return (): string => {
      for (;;) {
        const name = `${folder}${stem}${++number}.xml`;
        if (!isTaken(name) && !isTaken(relationshipsOf(name))) return name;
      }
    };
  };
  const [nextSheet, nextDrawing, nextChart, nextTable] = [
    freeIn('worksheets/sheet'),
    freeIn('drawings/drawing'),
    freeIn('charts/chart'),
    freeIn('tables/table'),
  ];
  return {
    sheets: sheets.map(({ charts = [], table }) => ({
      sheet: nextSheet(),
      drawing: charts.length === 0 ? undefined : nextDrawing(),
      charts: charts.map(nextChart),
      table: table && nextTable(),
    })),
    styles: styles || sheets.length === 0 ? undefined : firstFree(`${folder}styles`, isTaken),
  };
}

function firstFree(stem: string, isTaken: (name: string) => boolean): string {
  for (let number = 1; ; number++) {
    const name = `${stem}${number === 1 ? '' : number}.xml`;
    if (!isTaken(name)) return name;
  }
}
