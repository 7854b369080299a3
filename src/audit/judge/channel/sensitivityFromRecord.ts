import type { PlacedFact } from '../../model/findings.ts';
import { problemAt } from '../../read/join/problems.ts';
import type { ChannelRow } from '../../read/rows/channelRow.ts';
import { fixed, inUnit } from '../evaluate/amounts.ts';
import type { Usable } from '../records/chooseRecord.ts';
import { averageOf } from '../records/evaluateRecord.ts';
import type { Context } from './context.ts';

/** The row with the sensitivity of its calibration record, where the channel list names none; that is said. */
export function withRecord(
  row: ChannelRow,
  usable: Usable | undefined,
  { tables, policy }: Context,
  facts: PlacedFact[],
): ChannelRow {
  const told = row.diagnostics.some(({ column }) => column === 'measured');
  if (row.measured || told || !usable) return row;
  if (row.kind !== 'radial' && row.kind !== 'axial') return row;
  const zero = row.kind === 'axial' ? row.zeroMeasured : null;
  const measured = averageOf(usable, inUnit(row.gapVoltage ?? zero, fixed.volt), policy);
  if (!measured) return row;
  const { sheet, row: recordRow } = usable.raw;
  const values = { sheet, row: recordRow, value: measured.value, unit: measured.unit.text };
  facts.push(problemAt(tables.channels, row.row, 'measured', 'sensitivity-from-record', 'note', values));
  return { ...row, measured };
}
