import { columnNumber } from '../../../../cells/address.ts';
import type { ColumnMap, MappedField, TableMap, MappedTable } from '../../../model/columnMap.ts';
import { headerKey } from '../../tables/header.ts';
import { tagKey } from '../../tables/tagKey.ts';
import { columnsOf, type TableKind } from '../../tables/vocabulary.ts';
import type { Field } from '../fields/field.ts';
import { meanings, type MeaningId } from '../meaning.ts';
import type { Lane } from '../tables/lane.ts';
import { statedUnit, type StatedUnit } from '../vocabulary/statedUnit.ts';
import { firstColumn } from './places.ts';
import type { Answers, TableAnswers } from './answers.ts';

const ids = new Map([...meanings].map(([id, { name }]) => [headerKey(name), id]));
const core: Readonly<Record<TableKind, readonly MeaningId[]>> = {
  channels: ['measured', 'asLeftSensitivity'],
  settings: ['configured', 'alert', 'danger'],
};

/** The meaning of a standard header; `undefined` where there is none of that name. */
export function meaningNamed(name: string): MeaningId | undefined {
  return ids.get(headerKey(name));
}

/** A map as it is looked up while a workbook is read. What it says of places that hold something else by now is left aside. */
export function answersIn(map: ColumnMap): Answers {
  const cells = new Map<string, number | null>();
  for (const [address, value] of Object.entries(map.cells ?? {})) {
    const parts = /^(.*)!\$?([A-Za-z]{1,3})\$?(\d+)$/u.exec(address);
    if (parts) cells.set(`${parts[1] ?? ''}!${parts[3] ?? ''},${columnNumber(parts[2] ?? '')}`, value);
  }
  return {
    of: (lane) => tableAnswers(map, lane),
    names: new Map(Object.entries(map.names ?? {}).map(([from, to]) => [tagKey(from), to])),
    leftOut: new Set(
      (map.notOfAudit ?? []).flatMap(({ sheet, row, column }) =>
        row !== undefined || column !== undefined ? [`${sheet}!${column ?? ''}${row ?? ''}`] : [],
      ),
    ),
    cells,
  };
}

function tableAnswers(map: ColumnMap, lane: Lane): TableAnswers | undefined {
  const columns = new Map<MeaningId, Field | null>();
  const units = new Map<MeaningId, StatedUnit>();
  const notQuantities = new Set<Field>();
  const table = (map.tables ?? []).find((one) => isOf(one, lane));
  for (const kind of ['channels', 'settings'] as const) {
    const said = map[kind];
    if (said) ofOldMap(kind, said, lane, columns, units);
  }
  for (const [name, said] of Object.entries(table?.columns ?? {})) {
    const id = meaningNamed(name);
    if (id === undefined) continue;
    const field = said === null ? null : fieldAt(lane, said);
    if (field === undefined) continue;
    columns.set(id, field);
    const unit = typeof said === 'object' && said?.unit !== undefined ? statedUnit(said.unit) : undefined;
    if (unit) units.set(id, unit);
  }
  for (const [name, text] of Object.entries(table?.units ?? {})) {
    const [id, unit] = [meaningNamed(name), statedUnit(text)];
    if (id !== undefined && unit) units.set(id, unit);
  }
  for (const at of table?.notOfAudit ?? []) {
    const field = fieldAt(lane, at);
    if (field) notQuantities.add(field);
  }
  const spoke = table !== undefined || columns.size > 0 || units.size > 0;
  if (!spoke) return undefined;
  return {
    columns,
    units,
    notQuantities,
    machine: table?.machine ?? null,
    machineFromHeadings: table?.machineFrom === 'headings',
    series: table?.series ?? null,
    use: table?.use ?? null,
  };
}

function isOf(said: MappedTable, { block, axis }: Lane): boolean {
  if (said.sheet.toLowerCase() !== block.sheet.name.toLowerCase()) return false;
  if (said.lies !== undefined && said.lies !== block.lies) return false;
  if (said.from !== undefined && columnNumber(said.from) !== firstColumn(block)) return false;
  if (said.probe !== undefined && headerKey(said.probe) !== headerKey(axis?.name ?? '')) return false;
  const first = typeof said.header === 'number' ? said.header : columnNumber(said.header);
  return first === block.header[0] || (first > block.header[0] && first <= block.header[1]);
}

/** The field that an answer names; `undefined` where none is there, or another header than it was said of. */
function fieldAt(lane: Lane, said: string | MappedField): Field | undefined {
  const { at, header } = typeof said === 'string' ? { at: said, header: undefined } : said;
  const { fields, block } = lane;
  const place = block.lies === 'columns' ? Number(at) : columnNumber(at);
  const byPlace = block.lies === 'forms' ? undefined : fields.find((field) => field.place.at === place);
  const byText = fields.filter(
    ({ text, parts }) =>
      headerKey(text) === headerKey(at) || headerKey(parts.at(-1)?.text ?? '') === headerKey(at),
  );
  const fitting = [byText.length === 1 ? byText[0] : undefined, byPlace].filter(
    (field) => field !== undefined && (header === undefined || headerKey(header) === headerKey(field.text)),
  );
  return fitting[0];
}

/** What a map of one channel list and one table of settings says of a lane. */
function ofOldMap(
  kind: TableKind,
  said: TableMap,
  lane: Lane,
  columns: Map<MeaningId, Field | null>,
  units: Map<MeaningId, StatedUnit>,
): void {
  const { block } = lane;
  const named = said.sheet !== undefined || said.headerRow !== undefined;
  const isMeant =
    (said.sheet === undefined || said.sheet.toLowerCase() === block.sheet.name.toLowerCase()) &&
    (said.headerRow === undefined ||
      (said.headerRow >= block.header[0] && said.headerRow <= block.header[1]));
  if (named && !isMeant) {
    for (const id of core[kind]) columns.set(id, null);
    return;
  }
  const own = new Map<MeaningId, Field | null>();
  for (const [name, at] of Object.entries(said.columns ?? {})) {
    const id = Object.entries(columnsOf(kind)).find(
      ([, spec]) => headerKey(spec.name) === headerKey(name),
    )?.[0];
    const field = at === null ? null : fieldAt(lane, at);
    if (id !== undefined && field !== undefined) own.set(id as MeaningId, field);
  }
  if (!named && own.size < Object.keys(said.columns ?? {}).length) return;
  for (const [id, field] of own) columns.set(id, field);
  for (const [name, text] of Object.entries(said.units ?? {})) {
    const id = Object.entries(columnsOf(kind)).find(
      ([, spec]) => headerKey(spec.name) === headerKey(name),
    )?.[0];
    const unit = statedUnit(text);
    if (id !== undefined && unit) units.set(id as MeaningId, unit);
  }
}
