import { cellText } from '../../cells/cell.ts';
import { type Sheet, type Workbook, cellAt } from '../../cells/sheet.ts';
import { readAuditedLine } from '../auditedLine.ts';
import { auditedColumn } from '../results/resultsSheet.ts';
import { titleOf } from '../titles.ts';

/** The results of an earlier audit that stand in a workbook. */
export interface EarlierSheet {
  readonly sheet: Sheet;
  /** The file that was audited; the workbook itself where the sheet does not say. */
  readonly input: string;
  /** ISO 8601; `null` where the sheet does not say. */
  readonly audited: string | null;
  /** Version of the rules; `null` where the sheet does not say. */
  readonly rules: string | null;
}

/** Sheets of results in a workbook, the latest first; those that name no time stand last, the last of the workbook first. */
export function earlierSheets({ name, sheets }: Workbook): readonly EarlierSheet[] {
  // Behind the title there may stand what tells audits apart.
  const title = titleOf('results');
  const found = sheets
    .filter((sheet) => {
      const text = cellText(cellAt(sheet, 1, 1));
      return text === title || text.startsWith(`${title} · `);
    })
    .map((sheet): EarlierSheet => {
      const line = readAuditedLine(cellText(cellAt(sheet, 1, auditedColumn)));
      const { input = name, audited = null, rules = null } = line ?? {};
      return { sheet, input, audited, rules };
    });
  return found.reverse().toSorted((one, other) => (other.audited ?? '').localeCompare(one.audited ?? ''));
}
