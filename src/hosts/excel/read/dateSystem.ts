/**
 * Asks whether the workbook counts its days from 1904: there 2 January 1904 is day 1, else day 1463. The interface has no
 * property for it, but its worksheet function DATE goes by the workbook's date system (public reference).
 */
export function askForDate1904(context: Excel.RequestContext): () => boolean {
  const day = context.workbook.functions.date(1904, 1, 2);
  day.load('value');
  return () => day.value === 1;
}
