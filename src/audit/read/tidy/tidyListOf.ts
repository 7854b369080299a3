import { DateCell, cellText, type Cell } from '../../../cells/cell.ts';
import { cellAt, type Sheet } from '../../../cells/sheet.ts';
import { factOf } from '../../model/findings.ts';
import type { Steps } from '../../model/steps.ts';
import type { Diagnostic } from '../rows/diagnostic.ts';
import { channelColumns } from '../tables/channelColumns.ts';
import { channelKey, tagKey } from '../tables/tagKey.ts';
import type { TableKind } from '../tables/vocabulary.ts';
import { placeIn, type Place } from '../understand/blocks/block.ts';
import { meaning, type MeaningId } from '../understand/meaning.ts';
import type { ReadChannel, ReadValue } from '../understand/readings/channel.ts';
import type { TableRead } from '../understand/tables/tableRead.ts';
import type { Understanding } from '../understand/understand.ts';
import { cellRemark, problemRemarks } from './cellRemarks.ts';
import type { TidyChannel, TidyList, TidyValue } from './tidyList.ts';
import { tidyColumns } from './tidyColumns.ts';

const stride = 1_000;

/** The table in which a meaning usually stands. */
function tableOf(id: MeaningId): TableKind {
  return id in channelColumns ? 'channels' : 'settings';
}

/** What is understood of a workbook as one list in the standard shape. */
export function* tidyListOf(
  { channels, tables }: Pick<Understanding, 'channels' | 'tables'>,
  sheets: readonly Sheet[],
): Steps<void, TidyList> {
  const byName = new Map(sheets.map((sheet) => [sheet.name, sheet]));
  const machines = new Map<string, Set<string>>();
  for (const { tag, machine } of channels) {
    const key = tagKey(tag);
    machines.set(key, (machines.get(key) ?? new Set()).add(tagKey(machine)));
  }
  const list: TidyChannel[] = [];
  for (const channel of channels) {
    if (list.length % stride === stride - 1) yield;
    const several = (machines.get(tagKey(channel.tag))?.size ?? 0) > 1;
    list.push(tidyChannel(channel, keyOf(channel, several), byName));
  }
  const used = new Set(channels.flatMap(({ lines }) => lines.map(({ table }) => table)));
  const ofSheets = new Set([...used].map(({ lane }) => lane.block.sheet.name));
  return {
    sheets: sheets.filter(({ name }) => ofSheets.has(name)).map(({ name }) => name),
    columns: tidyColumns(tables.filter((table) => used.has(table))),
    channels: list,
  };
}

/** What a channel is told apart by: its tag, and its machine where the tag stands on several. */
function keyOf(channel: ReadChannel, several: boolean): string {
  return several ? channelKey(channel) : tagKey(channel.tag);
}

function tidyChannel(channel: ReadChannel, key: string, sheets: ReadonlyMap<string, Sheet>): TidyChannel {
  const { tag, machine, lines } = channel;
  const values = new Map<MeaningId, TidyValue>();
  const unused = new Map<MeaningId, Place>();
  const remarks: Record<TableKind, Diagnostic[]> = { channels: [], settings: [] };
  const say = (id: MeaningId, remark: Diagnostic, place: Place): void => {
    remarks[tableOf(id)].push(remark);
    if (!unused.has(id)) unused.set(id, place);
  };
  for (const [id, read] of channel.values) {
    if (id === 'kind') continue;
    const value = tidyValue(id, read, sheets);
    if (value) values.set(id, value);
  }
  const kind = kindOf(channel, sheets);
  if (kind) values.set('kind', kind);
  for (const one of channel.notes) {
    const { place, meaning: id } = one;
    const text = cellText(cellOf(sheets, place));
    remarks[tableOf(id)].push(cellRemark(one, headerOf(channel, id), text));
    if (one.unusable) {
      values.delete(id);
      unused.set(id, place);
    }
  }
  for (const { remark, place } of problemRemarks(channel)) {
    say(remark.column as MeaningId, remark, place);
  }
  for (const { id, header, place } of uncertain(channel)) {
    if (values.has(id) || unused.has(id)) continue;
    const facts = factOf('meaning-not-certain', 'warning', { quantity: meaning(id).name, header });
    say(id, { ...facts, column: id }, place);
  }
  for (const { table, record } of lines)
    for (const [id, { field }] of table.claims) {
      if (values.has(id) || unused.has(id) || meaning(id).holds !== 'number') continue;
      const place = placeIn(table.lane.block, field.place, record);
      if (place) unused.set(id, place);
    }
  const [first] = lines;
  const probe = lineWith(channel, ['measured', 'asLeftSensitivity']);
  const settings = lineWith(channel, ['configured', 'danger', 'alert']);
  const at = first?.place ?? { sheet: '', row: 1, column: 1 };
  return {
    tag,
    machine,
    key,
    at: {
      channels: probe?.place ?? at,
      settings: settings?.place ?? at,
    },
    listed: {
      channels: probe !== undefined || remarks.channels.length > 0 || settings === undefined,
      settings: settings !== undefined || remarks.settings.length > 0,
    },
    hidden: lines.some(
      ({ table: { lane }, record }) => lane.block.lies === 'rows' && lane.block.sheet.hiddenRows.has(record),
    ),
    values,
    unused,
    remarks,
  };
}

function lineWith(
  { lines }: ReadChannel,
  ids: readonly MeaningId[],
): ReadChannel['lines'][number] | undefined {
  for (const id of ids) {
    const found = lines.find(({ table }) => table.claims.has(id));
    if (found) return found;
  }
  return undefined;
}

function cellOf(sheets: ReadonlyMap<string, Sheet>, { sheet, row, column }: Place): Cell {
  const found = sheets.get(sheet);
  return found ? cellAt(found, row, column) : null;
}

function tidyValue(
  id: MeaningId,
  read: ReadValue,
  sheets: ReadonlyMap<string, Sheet>,
): TidyValue | undefined {
  const { holds } = meaning(id);
  const { place } = read;
  const cell = cellOf(sheets, place);
  if (holds === 'number') {
    if (!read.amount) return undefined;
    const { value, unit } = read.amount;
    return { cell: value, unit, place, asItStands: cell === value };
  }
  if (holds === 'date')
    return read.day === null
      ? undefined
      : { cell: new DateCell(read.day), unit: null, place, asItStands: typeof cell !== 'string' };
  return read.text === ''
    ? undefined
    : { cell: read.text, unit: null, place, asItStands: cell === read.text };
}

/** The kind by the word for it; a word for no kind known stands as it is, so that nobody takes the channel for a radial one. */
function kindOf(
  { kind, kindSaid, lines }: ReadChannel,
  sheets: ReadonlyMap<string, Sheet>,
): TidyValue | undefined {
  if (kindSaid === '') return undefined;
  for (const { table, record } of lines) {
    const place = table.kindField && placeIn(table.lane.block, table.kindField.place, record);
    if (!place || cellText(cellOf(sheets, place)) !== kindSaid) continue;
    return { cell: kind ?? kindSaid, unit: null, place, asItStands: kind === null || kind === kindSaid };
  }
  return undefined;
}

function headerOf({ lines }: ReadChannel, id: MeaningId): string {
  for (const { table } of lines) {
    const claim = table.claims.get(id);
    if (claim) return claim.field.text;
  }
  return meaning(id).name;
}

/** Needed quantities of a channel that a field may be, with its cell. */
function uncertain({ lines }: ReadChannel): { id: MeaningId; header: string; place: Place }[] {
  return lines.flatMap(({ table, record }) =>
    [...notCertain(table)].flatMap(({ meaning: id, field }) => {
      const place = placeIn(table.lane.block, field.place, record);
      return place ? [{ id, header: field.text, place }] : [];
    }),
  );
}

function* notCertain({ claims }: TableRead) {
  for (const claim of claims.values())
    if (claim.standing !== 'certain' && claim.meaning !== 'tag' && meaning(claim.meaning).needed) yield claim;
}
