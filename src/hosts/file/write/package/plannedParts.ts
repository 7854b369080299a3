import { declaredNames } from './contentTypes.ts';
import type { OpenWorkbook } from './openWorkbook.ts';
import { folderOf } from './relationships.ts';

/** Names, free in the package, of the parts that will be added. */
export interface PlannedParts {
  readonly sheets: readonly string[];
  /** Set where the workbook has no style sheet and needs one. */
  readonly styles: string | undefined;
}

/** Chooses part names beside the workbook part; the package compares names without case. */
export function plannedParts(
  { archive, contentTypes, workbook, styles }: OpenWorkbook,
  sheetCount: number,
): PlannedParts {
  const declared = new Set(declaredNames(contentTypes));
  const folder = folderOf(workbook.entry.name.replaceAll('\\', '/'));
  const isFree = (name: string): boolean =>
    archive.get(name) === undefined && !declared.has(name.toLowerCase());
  const sheets: string[] = [];
  for (let number = 1; sheets.length < sheetCount; number++) {
    const name = `${folder}worksheets/sheet${number}.xml`;
    if (isFree(name)) sheets.push(name);
  }
  return { sheets, styles: styles || sheetCount === 0 ? undefined : firstFree(`${folder}styles`, isFree) };
}

function firstFree(stem: string, isFree: (name: string) => boolean): string {
  for (let number = 1; ; number++) {
    const name = `${stem}${number === 1 ? '' : number}.xml`;
    if (isFree(name)) return name;
  }
}
