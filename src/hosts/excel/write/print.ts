import type { SheetModel } from '../../../sheets/model.ts';
import { reference } from '../../formats/reference.ts';
import { footerText, pageNumbers } from '../../formats/footer.ts';

/** Sets how a sheet is printed: one page wide, header rows on each page, margins in points as in files. */
export function setPrint(sheet: Excel.Worksheet, { print }: SheetModel): void {
  const { pageLayout } = sheet;
  pageLayout.orientation = print.landscape ? 'Landscape' : 'Portrait';
  if (print.paper !== undefined) pageLayout.paperSize = print.paper === 'A4' ? 'A4' : 'Letter';
  const fitted = { horizontalFitToPages: 1, ...(print.onePage ? { verticalFitToPages: 1 } : {}) };
  pageLayout.zoom = print.scale === undefined ? fitted : { scale: print.scale };
  pageLayout.leftMargin = 28.8;
  pageLayout.rightMargin = 28.8;
  pageLayout.topMargin = 43.2;
  pageLayout.bottomMargin = 43.2;
  pageLayout.footerMargin = 21.6;
  if (print.area !== undefined) pageLayout.setPrintArea(reference(print.area));
  if (print.repeatRows !== undefined) {
    pageLayout.setPrintTitleRows(`$${print.repeatRows.from}:$${print.repeatRows.to}`);
  }
  const footer = pageLayout.headersFooters.defaultForAllPages;
  footer.leftFooter = footerText(print.footer ?? '');
  footer.rightFooter = pageNumbers;
}
