import type { PlacedFact } from '../../model/findings.ts';
import { problemAt } from '../../read/join/problems.ts';
import type { ChannelRow } from '../../read/rows/channelRow.ts';
import { placed, rowPlaceOf } from '../../read/rows/diagnostic.ts';
import type { FoundTable, Tables } from '../../read/tables/found.ts';
import type { JudgedChannel } from './context.ts';
import { incompleteChannel } from './incompleteChannel.ts';

/** A channel that can't be joined with settings: incomplete, for the reason given. */
export function unjoined(row: ChannelRow, trouble: PlacedFact | undefined, tables: Tables): JudgedChannel {
  const facts = [
    ...(trouble ? [trouble] : []),
    ...row.diagnostics.map((one) => placed(tables.channels, row.row, one)),
    ...hiddenRow(tables.channels, row.row),
  ];
  const result = incompleteChannel({ row, settings: null }, tables, []);
  return { result, ofVerdicts: [], facts, invalid: trouble ? [trouble] : [], member: null };
}

/** Says that a row is hidden, which is audited all the same. */
export function hiddenRow(table: FoundTable, row: number): PlacedFact[] {
  if (!table.sheet.hiddenRows.has(row)) return [];
  return [problemAt(table, row, 'tag', 'hidden-row', 'note', rowPlaceOf(table, row))];
}
