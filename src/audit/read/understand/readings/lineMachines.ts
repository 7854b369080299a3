import { cellText } from '../../../../cells/cell.ts';
import type { Sheet } from '../../../../cells/sheet.ts';
import { isHiddenRecord, recordsOf } from '../blocks/block.ts';
import { cellOfBlock } from '../fields/valueFacts.ts';
import type { TableRead } from '../tables/tableRead.ts';

/** Tells the machine of each line of a table: from its own cell, from the name above it, from a heading, or of the whole table. */
export function machineReader(
  table: TableRead,
  sheets: ReadonlyMap<string, Sheet>,
): (record: number) => string {
  const { lane, claims, machine, machineFromHeadings, headings } = table;
  if (machineFromHeadings) {
    return (record) => headings.findLast(({ place }) => place.row < record)?.text ?? '';
  }
  const claim = claims.get('machine');
  if (!claim) return () => (machine?.standing === 'certain' ? machine.name : '');
  const own = (record: number) => cellText(cellOfBlock(lane.block, sheets, claim.field.place, record));
  if (!namesOnce(table, own)) return own;
  const carried = new Map<number, string>();
  let last = '';
  for (const record of recordsOf(lane.block)) {
    last = own(record) || last;
    carried.set(record, last);
  }
  return (record) => carried.get(record) ?? '';
}

/**
 * Whether machines are named in the first of their lines alone, with blanks below: the first line has a name, none comes
 * twice, and most lines have none.
 */
function namesOnce({ lane, tag }: TableRead, own: (record: number) => string): boolean {
  if (lane.block.lies === 'forms' || !tag) return false;
  const names = new Set<string>();
  let blanks = 0;
  let named = 0;
  for (const record of recordsOf(lane.block)) {
    if (isHiddenRecord(lane.block, record)) continue;
    const tagged = cellText(cellOfBlock(lane.block, new Map(), tag.field.place, record)) !== '';
    const name = own(record);
    if (!tagged && name === '') continue;
    if (name === '') {
      if (named === 0) return false;
      blanks++;
      continue;
    }
    if (names.has(name)) return false;
    names.add(name);
    named++;
  }
  return blanks > 0 && blanks >= named;
}
