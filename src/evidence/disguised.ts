import type { AuditBasis } from '../audit/model/basis.ts';
import type { Report } from '../audit/model/report.ts';
import type { Sheet, Workbook } from '../cells/sheet.ts';
import { sheetNames, titleOf } from '../sheets/titles.ts';
import { titleOfSheet, type FoundRun } from './runs.ts';

const kinds = Object.keys(sheetNames) as (keyof typeof sheetNames)[];

/**
 * What of the result sheets of an audit is other than it looks: sheets that are hidden, that have the name of another of
 * them, or that have the title of one without its id, as a copy that shows other numbers would. One sentence each.
 */
export function disguised({ sheets, id }: FoundRun, without: readonly Sheet[]): string[] {
  const hidden = sheets
    .filter((sheet) => sheet.hidden)
    .map(({ name }) => `Result sheet '${name}' is hidden; the audit wrote it to be seen.`);
  const misnamed = sheets.flatMap((sheet) => {
    const own = kindOf(sheet);
    const other = kinds.find((kind) => sheetNames[kind] === sheet.name);
    return own === undefined || other === undefined || other === own
      ? []
      : [
          `Sheet '${sheet.name}' has the name of another result sheet: it is what the audit called '${sheetNames[own]}'.`,
        ];
  });
  const copies = without
    .filter((sheet) => sheets.some((one) => kindOf(one) === kindOf(sheet)))
    .map(
      ({ name }) =>
        `Sheet '${name}' has the title of a result sheet of audit ${id} without its id: a copy, or a title that was edited.`,
    );
  return [...hidden, ...misnamed, ...copies];
}

/** Sheets of the input that are hidden now and were not when they were audited, or the other way round. */
export function hiddenInputs(
  workbook: Workbook,
  { columns }: Report,
  { hiddenSheets }: AuditBasis,
): string[] {
  const used = new Set(columns.map(({ sheet }) => sheet));
  return workbook.sheets
    .filter(({ name, hidden }) => used.has(name) && hidden !== hiddenSheets.includes(name))
    .map(({ name, hidden }) =>
      hidden
        ? `Sheet '${name}', which was audited, is hidden now.`
        : `Sheet '${name}', which was hidden when it was audited, is not any more.`,
    );
}

function kindOf(sheet: Sheet): keyof typeof sheetNames | undefined {
  const title = titleOfSheet(sheet);
  return kinds.find((kind) => title === titleOf(kind) || title.startsWith(`${titleOf(kind)} ·`));
}
