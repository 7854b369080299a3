import { cellText } from '../../cells/cell.ts';
import { cellAt } from '../../cells/sheet.ts';
import type { EarlierRemark, Snapshot } from '../../audit/model/snapshot.ts';
import { headerRow } from '../results/headerRow.ts';
import { policyPlace } from '../results/policyCells.ts';
import { earlierChannels } from './earlierChannels.ts';
import type { EarlierSheet } from './earlierSheets.ts';
import { resultCells } from './resultCells.ts';

/** Columns without which a sheet of results can't be read. */
const needed = ['tag', 'threshold', 'verdict', 'unit', 'setpoint', 'multiplier', 'effective'] as const;

/**
 * The results of an earlier audit as a sheet shows them. A cell that can't be read is remarked on with its place; a sheet
 * without the columns of results gives no channels, and a remark that says so.
 */
export function earlierSnapshot({ sheet, input, audited, rules }: EarlierSheet): Snapshot {
  const remarks: EarlierRemark[] = [];
  const cells = resultCells(sheet, remarks);
  const missing = needed.filter((id) => !cells.has(id));
  if (missing.length > 0) {
    cells.remark(
      headerRow,
      'tag',
      `Row ${headerRow} lacks the headers of ${missing.join(', ')}, so no earlier results could be read. Restore them, or audit the earlier workbook anew.`,
    );
  }
  const tolerance = cells.numberAt(policyPlace.tolerance.row, policyPlace.tolerance.column, 'Tolerance');
  return {
    input,
    from: 'result sheet',
    sheet: sheet.name,
    audited,
    rules,
    tolerance,
    rule: cellText(cellAt(sheet, policyPlace.rule.row, policyPlace.rule.column)) || null,
    ...(missing.length > 0
      ? { channels: [], unknown: [] }
      : earlierChannels(sheet.name, cells, headerRow + 1, sheet.rows.length)),
    remarks,
  };
}
