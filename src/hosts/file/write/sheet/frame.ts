import { columnLetters } from '../../../../cells/address.ts';
import type { Area } from '../../../../cells/sheet.ts';
import { reference } from '../../../formats/reference.ts';
import type { SheetModel, ShadeRule } from '../../../../sheets/model.ts';
import { drawingId, tableId } from '../package/sheetLinks.ts';
import type { Dialect } from '../package/namespaces.ts';
import { escapeXml } from '../xml/text.ts';
import { footerText, pageNumbers } from '../../../formats/footer.ts';

/** The markup before and after a sheet's rows. */
export interface SheetFrame {
  readonly before: string;
  /** `links` is the markup of the sheet's links. */
  readonly after: (links: string) => string;
}

/**
 * Frames a sheet; `isFront`: the workbook opens on it; `shadeNumber` is the workbook's number of a shade's format. Order of
 * CT_Worksheet.
 */
export function sheetFrame(
  sheet: SheetModel,
  dialect: Dialect,
  isFront: boolean,
  shadeNumber: (rule: ShadeRule) => number,
): SheetFrame {
  const { filter, table, merges = [], shades = [], charts = [], print } = sheet;
  const hasCharts = charts.length > 0;
  const shaded = shades.map((rule, index) => shading(rule, shadeNumber(rule), index + 1)).join('');
  return {
    before: [
      '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n',
      `<worksheet xmlns="${dialect.main}"${hasCharts || table ? ` xmlns:r="${dialect.relationships}"` : ''}>`,
      print.scale === undefined ? '<sheetPr><pageSetUpPr fitToPage="1"/></sheetPr>' : '',
      view(sheet.freeze, isFront),
      '<sheetFormatPr defaultRowHeight="15"/>',
      columns(sheet.widths),
      '<sheetData>',
    ].join(''),
    after: (links) =>
      [
        '</sheetData>',
        filter ? `<autoFilter ref="${reference(filter)}"/>` : '',
        merged(merges),
        shaded,
        links,
        '<pageMargins left="0.4" right="0.4" top="0.6" bottom="0.6" header="0.3" footer="0.3"/>',
        pageSetup(print),
        headerFooter(print.footer ?? ''),
        pageBreaks(print.newPages ?? []),
        hasCharts ? `<drawing r:id="${drawingId}"/>` : '',
        table ? `<tableParts count="1"><tablePart r:id="${tableId}"/></tableParts>` : '',
        '</worksheet>',
      ].join(''),
  };
}

function pageSetup({ paper, scale, landscape, onePage }: SheetModel['print']): string {
  const size = paper === undefined ? '' : ` paperSize="${paperSizes[paper]}"`;
  const scaled =
    scale === undefined ? ` fitToWidth="1" fitToHeight="${onePage ? 1 : 0}"` : ` scale="${scale}"`;
  return `<pageSetup${size}${scaled} orientation="${landscape ? 'landscape' : 'portrait'}"/>`;
}

/** Numbers of paper sizes (ECMA-376 part 1, 18.3.1.63). */
const paperSizes = { Letter: 1, A4: 9 } as const;

function view(freeze: SheetModel['freeze'], isFront: boolean): string {
  const start = `<sheetViews><sheetView${isFront ? ' tabSelected="1"' : ''} workbookViewId="0"`;
  const { rows, columns: fixed } = freeze ?? { rows: 0, columns: 0 };
  if (rows === 0 && fixed === 0) return `${start}/></sheetViews>`;
  const pane = rows === 0 ? 'topRight' : fixed === 0 ? 'bottomLeft' : 'bottomRight';
  const splits = `${fixed > 0 ? ` xSplit="${fixed}"` : ''}${rows > 0 ? ` ySplit="${rows}"` : ''}`;
  const corner = `${columnLetters(fixed + 1)}${rows + 1}`;
  return [
    `${start}>`,
    `<pane${splits} topLeftCell="${corner}" activePane="${pane}" state="frozen"/>`,
    `<selection pane="${pane}" activeCell="${corner}" sqref="${corner}"/>`,
    '</sheetView></sheetViews>',
  ].join('');
}

/** Seven pixels a digit and five of padding, as in the default font at 11 points (ECMA-376 part 1, 18.3.1.13). */
function columns(widths: readonly number[]): string {
  if (widths.length === 0) return '';
  const stored = (characters: number): number => Math.trunc(((characters * 7 + 5) / 7) * 256) / 256;
  const markup = widths.map(
    (width, index) => `<col min="${index + 1}" max="${index + 1}" width="${stored(width)}" customWidth="1"/>`,
  );
  return `<cols>${markup.join('')}</cols>`;
}

/** Manual page breaks that a sheet holds (limit of spreadsheet programs, from memory). */
const mostBreaks = 1026;

/** A break stands below the row that it names (ECMA-376 part 1, 18.3.1.3). */
function pageBreaks(rows: readonly number[]): string {
  const breaks = rows.slice(0, mostBreaks);
  if (breaks.length === 0) return '';
  const markup = breaks.map((row) => `<brk id="${row - 1}" max="16383" man="1"/>`);
  return `<rowBreaks count="${breaks.length}" manualBreakCount="${breaks.length}">${markup.join('')}</rowBreaks>`;
}

function merged(areas: readonly Area[]): string {
  if (areas.length === 0) return '';
  const markup = areas.map((area) => `<mergeCell ref="${reference(area)}"/>`);
  return `<mergeCells count="${areas.length}">${markup.join('')}</mergeCells>`;
}

/** Spreadsheet programs compare texts here without case. A literal in a formula holds 255 characters. */
function shading({ area, equals }: ShadeRule, format: number, priority: number): string {
  if (equals.length > 255)
    throw new RangeError(`shade text "${equals.slice(0, 40)}…" is longer than 255 characters`);
  const literal = escapeXml(`"${equals.replaceAll('"', '""')}"`);
  return [
    `<conditionalFormatting sqref="${reference(area)}">`,
    `<cfRule type="cellIs" dxfId="${format}" priority="${priority}" stopIfTrue="1" operator="equal">`,
    `<formula>${literal}</formula></cfRule></conditionalFormatting>`,
  ].join('');
}

/** A page footer: the text at the left, "Page n of m" at the right. */
function headerFooter(text: string): string {
  const fitted = footerText(text);
  const left = fitted === '' ? '' : `&L${fitted}`;
  return `<headerFooter><oddFooter>${escapeXml(`${left}&R${pageNumbers}`)}</oddFooter></headerFooter>`;
}
