import type { NotUsed } from './notUsed.ts';
import { withoutHeaders } from './withoutHeaders.ts';
import type { Workbook } from '../../../../cells/sheet.ts';
import { tagKey } from '../../tables/tagKey.ts';
import { placeIn, recordsOf, type Block, type Place } from '../blocks/block.ts';
import type { Field } from '../fields/field.ts';
import { core, meaning, type MeaningId } from '../meaning.ts';
import type { ReadChannels } from '../readings/readChannels.ts';
import type { Line } from '../readings/records.ts';
import type { TableRead } from '../tables/tableRead.ts';

const ofLine: Readonly<Partial<Record<Line['is'], Pick<NotUsed, 'why' | 'weight' | 'what'>>>> = {
  total: { what: 'line', why: 'sums up', weight: 'note' },
  'totals row': { what: 'line', why: 'sums up', weight: 'note' },
  spare: { what: 'line', why: 'spare', weight: 'note' },
  heading: { what: 'heading', why: 'heading', weight: 'note' },
  'no tag': { what: 'line', why: 'no tag', weight: 'may bear on a danger' },
  'header again': { what: 'line', why: 'header again', weight: 'note' },
};

/** All that looks like a part of the audit and was not used. */
export function notUsed(
  workbook: Workbook,
  blocks: readonly Block[],
  tables: readonly TableRead[],
  read: ReadChannels,
): NotUsed[] {
  const found: NotUsed[] = [];
  for (const table of tables) found.push(...ofTable(table));
  for (const line of read.others) {
    const kind = ofLine[line.is];
    if (kind) found.push({ ...kind, looksLike: 'channel', place: line.place, text: line.tag });
  }
  const aside = tables.filter(({ setAside }) => setAside);
  found.push(...ofHidden(read.yielded, aside));
  const has = (id: MeaningId) =>
    read.channels.some(({ lines }) => lines.some(({ table }) => table.claims.has(id)));
  const both = has('configured') && has('measured');
  for (const { tag, lines } of both ? read.channels : []) {
    const [set, tested] = (['configured', 'measured'] as const).map((id) =>
      lines.some(({ table }) => table.claims.has(id)),
    );
    const [line] = lines;
    if (line && set !== tested)
      found.push({
        what: 'line',
        looksLike: 'channel',
        why: set ? 'no probe' : 'no settings',
        weight: 'may bear on a danger',
        place: line.place,
        text: tag,
      });
  }
  for (const { tag, troubles, notes } of read.channels) {
    for (const trouble of troubles) {
      const isCore = trouble.meanings.some((id) => core.includes(id));
      const why =
        trouble.is === 'rival tables'
          ? 'tables differ'
          : trouble.is === 'twice'
            ? 'twice'
            : 'machine not said';
      for (const place of trouble.places)
        found.push({
          what: isCore ? 'line' : 'value',
          looksLike: isCore ? 'channel' : (trouble.meanings[0] ?? 'channel'),
          why,
          weight: 'may bear on a danger',
          place,
          text: tag,
        });
    }
    for (const { unusable, place, meaning: id } of notes) {
      if (unusable)
        found.push({
          what: 'value',
          looksLike: id,
          why: 'unusable',
          weight: meaning(id).needed || id === 'kind' ? 'may bear on a danger' : 'optional',
          place,
          text: tag,
        });
    }
  }
  found.push(...withoutHeaders(workbook, blocks, new Set(read.channels.map(({ tag }) => tagKey(tag)))));
  return withoutDoubles(found);
}

/** Quantities that are read, and whose unit nothing states. */
function withoutUnits({ claims }: TableRead): NotUsed[] {
  return [...claims.values()].flatMap(({ meaning: id, field, unit, standing }): NotUsed[] => {
    const { dimensions, usualUnit, holds, needed } = meaning(id);
    const isStated = unit.fixed !== null || unit.beside.length > 0 || field.values.cellUnits.size > 0;
    if (standing !== 'certain' || holds !== 'number' || dimensions.length === 0 || usualUnit !== null)
      return [];
    if (isStated || field.values.numbers === 0) return [];
    return [
      {
        what: 'field',
        looksLike: id,
        why: 'no unit',
        weight: needed ? 'may bear on a danger' : 'optional',
        place: headerPlace(field),
        text: field.text,
      },
    ];
  });
}

/** Each thing once: several meanings of one line can be in trouble. */
function withoutDoubles(found: readonly NotUsed[]): NotUsed[] {
  const seen = new Set<string>();
  return found.filter(({ what, looksLike, why, place: { sheet, row, column }, text }) => {
    const key = [what, looksLike, why, sheet, row, column, text].join('\n');
    return !seen.has(key) && seen.add(key);
  });
}

/** Hidden lists and lines whose place visible ones take. */
function ofHidden(yielded: readonly Line[], aside: readonly TableRead[]): NotUsed[] {
  const tables = new Set([
    ...aside,
    ...yielded.filter(({ table }) => table.lane.block.sheet.hidden).map(({ table }) => table),
  ]);
  const lines = yielded.filter(({ table }) => !tables.has(table));
  return [
    ...[...tables].map((table): NotUsed => ({
      what: 'list',
      looksLike: 'list',
      why: 'hidden',
      weight: 'note',
      place: placeOf(table),
      text: table.lane.block.sheet.name,
    })),
    ...lines.map(({ place, tag }): NotUsed => ({
      what: 'line',
      looksLike: 'channel',
      why: 'hidden',
      weight: 'note',
      place,
      text: tag,
    })),
  ];
}

function placeOf({ lane }: TableRead): Place {
  const { block } = lane;
  const first = block.fields[0]?.header[0];
  return { sheet: block.sheet.name, row: first?.row ?? block.header[0], column: first?.column ?? 1 };
}

function headerPlace({ block, place }: Field): Place {
  const part = place.header.at(-1);
  return { sheet: block.sheet.name, row: part?.row ?? block.header[0], column: part?.column ?? place.at };
}

function ofTable(table: TableRead): NotUsed[] {
  const { claims, open, part, leftOut, setAside, tag } = table;
  if (leftOut || setAside || part === 'history' || part === 'checks') return [];
  const isUsed = part === 'channels' && tag?.standing === 'certain';
  const levels = open.filter(({ looksLike }) => looksLike === 'sensitivity' || looksLike === 'level');
  const core = [...claims.values()].filter(({ meaning: id }) => meaning(id).needed && id !== 'tag');
  if (!isUsed) {
    if (core.length === 0 && levels.length === 0) return [];
    return [
      {
        what: 'list',
        looksLike: 'list',
        why: tag ? 'not certain' : 'no names',
        weight: 'may bear on a danger',
        place: placeOf(table),
        text: table.lane.block.sheet.name,
      },
    ];
  }
  const found: NotUsed[] = open.map(({ field, looksLike }) => ({
    what: 'field',
    looksLike,
    why: 'no meaning',
    weight: looksLike === 'sensitivity' || looksLike === 'level' ? 'may bear on a danger' : 'optional',
    place: headerPlace(field),
    text: field.text,
  }));
  for (const { meaning: id, field, standing, evidence } of claims.values()) {
    if (standing !== 'certain') {
      const about = {
        what: 'field',
        looksLike: id,
        why: 'not certain',
        weight: meaning(id).needed ? 'may bear on a danger' : 'optional',
        text: field.text,
      } as const;
      found.push({ ...about, place: headerPlace(field) });
      const { block } = table.lane;
      if (block.lies !== 'rows')
        for (const record of recordsOf(block))
          found.push({
            ...about,
            what: 'value',
            place: placeIn(block, field.place, record) ?? headerPlace(field),
          });
    }
    for (const one of evidence)
      if (one.is === 'rival')
        found.push({
          what: 'field',
          looksLike: id,
          why: one.hidden ? 'hidden' : 'rival',
          weight: one.hidden ? 'note' : 'may bear on a danger',
          place: one.place,
          text: one.header,
        });
  }
  found.push(...withoutUnits(table));
  if (!claims.has('machine') && !table.machine) {
    const used = new Set([...claims.values()].map(({ field }) => field));
    for (const field of table.lane.fields) {
      const { values, concepts, units } = field;
      const repeats =
        values.texts > 1 &&
        values.distinct < values.compared &&
        values.numbers === 0 &&
        units.length === 0 &&
        values.units === 0;
      if (repeats && !used.has(field) && field !== table.kindField && !concepts.has('unit'))
        found.push({
          what: 'field',
          looksLike: 'machine',
          why: 'no meaning',
          weight: 'note',
          place: headerPlace(field),
          text: field.text,
        });
    }
  }
  const { machine } = table;
  if (machine && machine.standing !== 'certain' && machine.evidence.is === 'heading') {
    found.push({
      what: 'heading',
      looksLike: 'machine',
      why: 'not certain',
      weight: 'note',
      place: machine.evidence.place,
      text: machine.name,
    });
  }
  return found;
}
