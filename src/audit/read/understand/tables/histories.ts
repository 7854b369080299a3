import { cellText } from '../../../../cells/cell.ts';
import type { Sheet } from '../../../../cells/sheet.ts';
import { tagKey } from '../../tables/tagKey.ts';
import { recordsOf } from '../blocks/block.ts';
import { cellOfBlock } from '../fields/valueFacts.ts';
import { signsOf } from '../standing/certainties.ts';
import type { TableRead } from './tableRead.ts';

/**
 * Lists of dated sensitivities beside a list of channels that has the same tags and says by its header that it holds the
 * measured ones: those are readings over time.
 */
export function withHistories(tables: readonly TableRead[], sheets: ReadonlyMap<string, Sheet>): TableRead[] {
  const lists = tables.filter(({ part, claims }) => part === 'channels' && claims.has('measured'));
  const sure = lists.filter(saysMeasured);
  return tables.map((table) => {
    const { claims } = table;
    // Readings over time are those of a list beside them; alone they are the list, with several lines a channel.
    if (table.part === 'history' && lists.length === 0) return { ...table, part: 'channels' };
    const dated =
      claims.has('calibratedOn') &&
      !claims.has('configured') &&
      !claims.has('danger') &&
      !claims.has('alert');
    if (!lists.includes(table) || sure.includes(table) || !dated) return table;
    const own = tagsOf(table, sheets);
    const isOther = sure.some((list) => {
      const tags = tagsOf(list, sheets);
      return [...own].filter((tag) => tags.has(tag)).length * 2 >= own.size;
    });
    return isOther ? { ...table, part: 'history' } : table;
  });
}

function saysMeasured({ claims }: TableRead): boolean {
  const signs = signsOf(claims.get('measured')?.evidence ?? []);
  return signs.has('standard header') || signs.has('role by word') || signs.has('answer');
}

function tagsOf({ lane, tag }: TableRead, sheets: ReadonlyMap<string, Sheet>): ReadonlySet<string> {
  const tags = new Set<string>();
  if (tag)
    for (const record of recordsOf(lane.block))
      tags.add(tagKey(cellText(cellOfBlock(lane.block, sheets, tag.field.place, record))));
  tags.delete('');
  return tags;
}
