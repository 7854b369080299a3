import { type IWorkbookData, LocaleType } from '@univerjs/core';
import type { WorkbookView } from '../../hosts/file/view/types.ts';
import { gridSheet } from './gridSheet.ts';
import { gridStyle } from './gridStyle.ts';

/** Days by which day numbers of the 1904 date system lie below those of 1900 (ECMA-376 part 1, section 18.17.4.1). */
export const laterStart = 1462;

/** A workbook of a file as the grid stores it. Sheets keep their order; their ids are `sheet-0`, `sheet-1` …. */
export function gridWorkbook(view: WorkbookView): Partial<IWorkbookData> {
  const styleId = (index: number): string => `file-${index}`;
  const ids = view.sheets.map((_, index) => `sheet-${index}`);
  return {
    id: 'workbook',
    name: view.name,
    locale: LocaleType.EN_US,
    styles: Object.fromEntries(view.styles.map((style, index) => [styleId(index), gridStyle(style)])),
    sheetOrder: ids,
    sheets: Object.fromEntries(
      view.sheets.map((sheet, index) => [ids[index] ?? '', gridSheet(sheet, ids[index] ?? '', styleId)]),
    ),
  };
}
