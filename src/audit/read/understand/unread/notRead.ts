import { cellText, isBlank } from '../../../../cells/cell.ts';
import type { Workbook } from '../../../../cells/sheet.ts';
import { isResultSheet } from '../../tables/resultSheet.ts';
import { tagKey } from '../../tables/tagKey.ts';
import { placeIn, recordsOf, type Block, type Place } from '../blocks/block.ts';
import { isAmount } from '../blocks/cellKind.ts';
import type { Field } from '../fields/field.ts';
import { meaning, type MeaningId } from '../meanings/meaning.ts';
import type { ReadChannels } from '../readings/readChannels.ts';
import type { Line } from '../readings/records.ts';
import type { TableRead } from '../tables/tableRead.ts';

/** How much hangs on what was not read: a danger may, a value beside it may, or nothing but completeness does. */
export type Weight = 'may bear on a danger' | 'optional' | 'note';

/** Something that looks like a part of the audit and was not used, with what it looks like and why it was not. */
export interface NotUsed {
  readonly what: 'list' | 'field' | 'line' | 'value' | 'heading';
  readonly looksLike:
    'list' | 'sensitivity' | 'level' | 'gap voltage' | 'date' | 'machine' | 'channel' | 'other' | MeaningId;
  readonly why:
    | 'not certain'
    | 'no meaning'
    | 'rival'
    | 'hidden'
    | 'no names'
    | 'no headers'
    | 'sums up'
    | 'spare'
    | 'heading'
    | 'no tag'
    | 'header again'
    | 'calibration record'
    | 'left out'
    | 'tables differ'
    | 'twice'
    | 'machine not said'
    | 'no settings'
    | 'no probe'
    | 'unusable';
  readonly weight: Weight;
  readonly place: Place;
  readonly text: string;
}

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
  for (const table of new Set(read.yielded.map((line) => line.table))) {
    found.push({
      what: 'list',
      looksLike: 'list',
      why: 'hidden',
      weight: 'note',
      place: placeOf(table),
      text: table.lane.block.sheet.name,
    });
  }
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
      const why =
        trouble.is === 'rival tables'
          ? 'tables differ'
          : trouble.is === 'twice'
            ? 'twice'
            : 'machine not said';
      for (const place of trouble.places)
        found.push({
          what: 'line',
          looksLike: 'channel',
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
          weight: meaning(id).needed ? 'may bear on a danger' : 'optional',
          place,
          text: tag,
        });
    }
  }
  found.push(...withoutHeaders(workbook, blocks, new Set(read.channels.map(({ tag }) => tagKey(tag)))));
  return found;
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
  const { claims, open, part, leftOut, tag } = table;
  if (leftOut || part === 'history') return [];
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
  if (!claims.has('machine') && !table.machine) {
    const used = new Set([...claims.values()].map(({ field }) => field));
    for (const field of table.lane.fields) {
      const { values, concepts, units } = field;
      const repeats =
        values.texts > 1 &&
        values.distinct < values.filled &&
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

/** Rows of numbers that stand in no table: under a tag that is known, or several below each other. */
function withoutHeaders(workbook: Workbook, blocks: readonly Block[], tags: ReadonlySet<string>): NotUsed[] {
  const found: NotUsed[] = [];
  for (const sheet of workbook.sheets) {
    if (isResultSheet(sheet)) continue;
    const spans = blocks
      .filter((block) => block.sheet === sheet)
      .map(({ lies, header, span, fields, forms }) => {
        if (lies === 'rows') return [header[0], span[1]] as const;
        if (lies === 'columns') return [fields[0]?.at ?? 0, fields.at(-1)?.at ?? 0] as const;
        const rows = forms.flatMap((form) =>
          [...form.values()].filter((place) => place.sheet === sheet.name).map(({ row }) => row),
        );
        return [Math.min(...rows), Math.max(...rows)] as const;
      });
    let run = 0;
    for (const [index, cells] of sheet.rows.entries()) {
      const row = index + 1;
      if (spans.some(([from, to]) => row >= from && row <= to)) {
        run = 0;
        continue;
      }
      const amounts = cells.filter((cell) => cell !== null && isAmount(cell)).length;
      const name = cells.findIndex((cell) => typeof cell === 'string' && !isBlank(cell));
      const isKnown = amounts > 0 && cells.some((cell) => typeof cell === 'string' && tags.has(tagKey(cell)));
      run = amounts >= 2 && name >= 0 ? run + 1 : 0;
      if (!isKnown && run !== 2) continue;
      found.push({
        what: 'list',
        looksLike: 'list',
        why: 'no headers',
        weight: 'may bear on a danger',
        place: { sheet: sheet.name, row, column: name + 1 },
        text: cellText(cells[name] ?? null),
      });
    }
  }
  return found;
}
