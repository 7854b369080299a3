import { type IWorkbookData, LocaleType } from '@univerjs/core';
import { kindOfCode } from '../../hosts/formats/numberFormat.ts';
import type { WorkbookView } from '../../hosts/file/view/types.ts';
import { gridSheet, type StyleFacts } from './gridSheet.ts';
import { gridStyle } from './gridStyle.ts';
import type { OpenedFile } from './openFile.ts';

/** Days by which day numbers of the 1904 date system lie below those of 1900 (ECMA-376 part 1, section 18.17.4.1). */
export const laterStart = 1462;

/** Id of a sheet in the grid by its place in what is shown of the file. */
export function sheetId(index: number): string {
  return `sheet-${index}`;
}

/** Name in the grid of a style of the file, by its number. */
export function styleId(style: number): string {
  return `file-${style}`;
}

/** A workbook of a file as the grid stores it; the grid knows the 1900 date system alone. Sheets keep their order. */
export function gridWorkbook(
  view: WorkbookView,
  plainText?: OpenedFile['plainText'],
): Partial<IWorkbookData> {
  const styles: StyleFacts = {
    id: styleId,
    daysMore: (style) =>
      view.date1904 && kindOfCode(view.styles[style]?.numberFormat ?? '') === 'date' ? laterStart : 0,
    size: (style) => view.styles[style]?.size ?? 0,
  };
  const ids = view.sheets.map((_, index) => sheetId(index));
  return {
    id: 'workbook',
    name: view.name,
    locale: LocaleType.EN_US,
    styles: Object.fromEntries(view.styles.map((style, index) => [styleId(index), gridStyle(style)])),
    sheetOrder: ids,
    sheets: Object.fromEntries(
      view.sheets.map((sheet, index) => [
        ids[index] ?? '',
        gridSheet(sheet, ids[index] ?? '', styles, plainText),
      ]),
    ),
  };
}
