import type { ChannelRow } from '../rows/channelRow.ts';
import type { Amount } from '../rows/rowReader.ts';
import type { ListsRead } from '../bookRead.ts';
import { pairReader } from '../pairedRows.ts';
import { isOnlyTag, tagAt } from '../join/tagIndex.ts';
import { tagKey } from '../tables/tagKey.ts';
import type { TidyChannel, TidyList } from '../tidy/tidyList.ts';
import type { Block } from '../understand/blocks/block.ts';
import type { MeaningId } from '../understand/meaning.ts';
import type { NotUsed } from '../understand/unread/notUsed.ts';
import type { Understanding } from '../understand/understand.ts';

const core = ['measured', 'configured', 'alert', 'danger'] as const satisfies readonly MeaningId[];

/** Why a row with a tag is no channel. */
const noChannel: ReadonlySet<NotUsed['why']> = new Set(['sums up', 'spare', 'header again']);

/**
 * Whether what is understood of a workbook says more than its standard tables do, of channels, of rows that are none or of
 * machines, that other lists contradict them, or what has to be asked where they know no channel: then it counts. Where it knows less, or merely the same, or loses a row
 * without a word, the standard tables count.
 */
export function isCloserLook(
  { tables, index }: ListsRead,
  { channels, notUsed, tables: lists, questions }: Understanding,
  { channels: list }: TidyList,
): boolean {
  const rivals = new Set(channels.flatMap(({ tag, troubles }) => (troubles.length > 0 ? [tagKey(tag)] : [])));
  const byTag = new Map<string, TidyChannel[]>();
  for (const channel of list) {
    const key = tagKey(channel.tag);
    const there = byTag.get(key);
    if (there) there.push(channel);
    else byTag.set(key, [channel]);
  }
  const said = new Set(
    [
      ...notUsed.flatMap(({ why, place }) => (noChannel.has(why) ? [place] : [])),
      // A row that tells the machine of a list is no channel of it.
      ...lists.flatMap(({ machine }) =>
        machine && 'place' in machine.evidence ? (machine.evidence.place ?? []) : [],
      ),
      // Nor is one of its header rows, also where they come again.
      ...lists.flatMap(({ lane: { block }, part }) =>
        part === 'channels' && block.lies === 'rows'
          ? headerRowsOf(block).map((row) => ({ sheet: block.sheet.name, row }))
          : [],
      ),
    ].map(({ sheet, row }) => `${sheet}\n${row}`),
  );
  const read = pairReader(tables);
  let known = 0;
  let [contradicted, isNone, machineTold] = [false, false, false];
  for (const row of index.channels.tagged) {
    const own = byTag.get(tagKey(tagAt(tables.channels, row))) ?? [];
    if (!isOnlyTag(tables.channels, row) && own.every(({ values }) => values.size === 0)) {
      if (!said.has(`${tables.channels.sheet.name}\n${row}`)) return false;
      isNone = true;
    }
    const [settingsRow, second] = index.settings.rowsOf(index.channels.keyOf(row));
    if (settingsRow === undefined || second !== undefined) continue;
    if (index.channels.rowsOf(index.channels.keyOf(row)).length > 1) continue;
    const pair = read.pair(row, settingsRow);
    const amounts = { ...pair.row, ...pair.settings };
    if (core.some((id) => !amounts[id]?.unit) || hasUnreadKind(pair.row.diagnostics)) continue;
    known++;
    const same = own.find(({ values }) => core.every((id) => isSame(amounts[id], values.get(id))));
    if (same) machineTold ||= same.machine !== '' && pair.row.machine === '';
    else if (!rivals.has(tagKey(tagAt(tables.channels, row)))) return false;
    else contradicted = true;
  }
  const understood = list.filter(({ values }) => core.every((id) => values.get(id)?.unit)).length;
  const isAsking = known === 0 && questions.some(({ needed }) => needed);
  return contradicted || isNone || machineTold || isAsking || understood > known;
}

function headerRowsOf({ header: [first, last], repeats }: Block): number[] {
  return [...Array.from({ length: last - first + 1 }, (_, at) => first + at), ...repeats];
}

function hasUnreadKind(diagnostics: ChannelRow['diagnostics']): boolean {
  return diagnostics.some(({ column, severity }) => column === 'kind' && severity !== 'note');
}

function isSame(amount: Amount | null, value: ReturnType<TidyChannel['values']['get']>): boolean {
  if (!amount?.unit || !value?.unit || typeof value.cell !== 'number') return false;
  const [one, other] = [amount.value * amount.unit.factor, value.cell * value.unit.factor];
  return (
    amount.unit.dimension === value.unit.dimension &&
    amount.unit.detection === value.unit.detection &&
    Math.abs(one - other) <= 1e-9 * Math.max(Math.abs(one), Math.abs(other))
  );
}
