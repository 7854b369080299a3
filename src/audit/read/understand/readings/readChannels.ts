import type { Sheet } from '../../../../cells/sheet.ts';
import type { Steps } from '../../../model/steps.ts';
import { tagKey } from '../../tables/tagKey.ts';
import type { Answers } from '../answers/answers.ts';
import { type MeaningId, core, meaning } from '../meaning.ts';
import type { Claim } from '../tables/claim.ts';
import type { TableRead } from '../tables/tableRead.ts';
import type { ReadChannel, ReadValue, ReadingProblem } from './channel.ts';
import { joinLines, type JoinedLines } from './join.ts';
import { kindContradiction, kindOf } from './kindOf.ts';
import type { PlacedNote } from './note.ts';
import { readField, type FieldRead } from './readField.ts';
import { linesOf, tagsBesideOthers, type Line } from './records.ts';
import type { Amount } from '../../rows/rowReader.ts';
import { convert } from '../../../../units/unit.ts';
import { headerKey } from '../../tables/header.ts';

/** Texts of which two that differ contradict each other. */
const exclusive: readonly MeaningId[] = ['group', 'voting', 'bypass', 'direction'];

/** The channels of a workbook, with the lines that are none. */
export interface ReadChannels {
  readonly channels: readonly ReadChannel[];
  /** Lines of the tables that are no channels: totals, headings, spares. */
  readonly others: readonly Line[];
  /** Lines of hidden lists whose place visible ones take. */
  readonly yielded: readonly Line[];
}

const stride = 1_000;

/** Reads all tables of channels together; only what is certain is read. */
export function* readChannels(
  tables: readonly TableRead[],
  sheets: ReadonlyMap<string, Sheet>,
  said: Answers,
): Steps<void, ReadChannels> {
  const used = tables.filter(
    ({ part, leftOut, tag }) => part === 'channels' && !leftOut && tag !== null && tag.standing === 'certain',
  );
  const known = knownTags(used, sheets);
  const lines: Line[] = [];
  const others: Line[] = [];
  for (const table of used) {
    const isKnown = (tag: string) =>
      known.some(([of, keys]) => of.lane.block !== table.lane.block && keys().has(tagKey(tag)));
    for (const line of linesOf(table, sheets, isKnown, said.leftOut)) {
      if (line.is === 'channel') lines.push(line);
      else if (line.is !== 'empty') others.push(line);
      if ((lines.length + others.length) % stride === 0) yield;
    }
  }
  const read = (line: Line, claim: Claim): FieldRead | undefined =>
    readField(line.table.lane, claim, line.record, sheets, said.cells);
  const same = (one: Line, other: Line, meanings: readonly MeaningId[]): boolean =>
    meanings.every((id) => {
      const [a, b] = [one, other].map((line) => {
        const claim = line.table.claims.get(id);
        return claim ? read(line, claim) : undefined;
      });
      return sameValue(a?.amount, b?.amount);
    });
  const nameOf = (tag: string) => said.names.get(tagKey(tag)) ?? tag;
  const joined = yield* joinLines(lines, nameOf, same);
  const channels: ReadChannel[] = [];
  for (const one of joined) {
    if (channels.length % stride === 0) yield;
    channels.push(channelOf(one, read, sheets));
  }
  return { channels, others, yielded: joined.flatMap(({ yielded }) => yielded) };
}

function knownTags(
  tables: readonly TableRead[],
  sheets: ReadonlyMap<string, Sheet>,
): readonly (readonly [TableRead, () => ReadonlySet<string>])[] {
  return tables.map((table) => {
    let keys: ReadonlySet<string> | undefined;
    return [
      table,
      () => {
        keys ??= tagsBesideOthers(table, sheets);
        return keys;
      },
    ];
  });
}

function channelOf(
  joined: JoinedLines,
  read: (line: Line, claim: Claim) => FieldRead | undefined,
  sheets: ReadonlyMap<string, Sheet>,
): ReadChannel {
  const values = new Map<MeaningId, ReadValue>();
  const notes: PlacedNote[] = [];
  const percents: [MeaningId, FieldRead][] = [];
  const open = new Set(joined.troubles.flatMap((trouble: ReadingProblem) => trouble.meanings));
  const several = joined.lines.length > 1;
  const holders = new Map<MeaningId, [TableRead, ReadValue][]>();
  for (const line of joined.lines) {
    for (const [id, claim] of line.table.claims) {
      if (id === 'tag' || claim.standing !== 'certain' || open.has(id)) continue;
      const found = read(line, claim);
      if (!found) continue;
      if (values.has(id) && found.amount === null && found.text === '') continue;
      if (found.notes.length > 0) notes.push(...found.notes);
      if (found.ofScale !== null) percents.push([id, found]);
      else if (several && (found.amount !== null || found.text !== ''))
        holders.set(id, [...(holders.get(id) ?? []), [line.table, found]]);
      if (found.ofScale === null && !values.has(id)) values.set(id, found);
    }
  }
  const troubles = several ? [...joined.troubles, ...contradictions(holders)] : joined.troubles;
  for (const { meanings } of troubles) for (const id of meanings) values.delete(id);
  for (const [id, found] of percents) {
    const { value, note } = ofScale(id, found, values.get('fullScale')?.amount ?? null);
    values.set(id, value);
    notes.push(note);
  }
  const { kind, kindSaid, place } = kindOf(joined.lines, sheets);
  const differs = place && kindContradiction(kind, kindSaid, values, place);
  return {
    tag: joined.tag,
    machine: joined.machine,
    kind: differs ? null : kind,
    kindSaid,
    values,
    notes: differs ? [...notes, differs] : notes,
    troubles,
    lines: joined.lines,
  };
}

/** A setpoint in per cent of full scale, worked out in the unit of the full scale; unusable without one. */
function ofScale(
  id: MeaningId,
  found: FieldRead,
  scale: Amount | null,
): { readonly value: ReadValue; readonly note: PlacedNote } {
  const percent = found.ofScale ?? 0;
  const { place, text } = found;
  const unit = scale?.unit;
  if (!scale || !unit || unit.dimension === 'percent')
    return {
      value: { amount: null, text, day: null, place },
      note: { note: { is: 'no full scale', percent }, meaning: id, place, unusable: true },
    };
  return {
    value: { amount: { value: (percent * scale.value) / 100, unit }, text, day: null, place },
    note: {
      note: { is: 'worked out from full scale', percent, scale: scale.value, unit: unit.text },
      meaning: id,
      place,
      unusable: false,
    },
  };
}

/** Meanings beside the needed ones of which several tables say different things: none of them is chosen. */
function contradictions(
  holders: ReadonlyMap<MeaningId, readonly (readonly [TableRead, ReadValue])[]>,
): ReadingProblem[] {
  const found: ReadingProblem[] = [];
  for (const [id, held] of holders) {
    const [first, ...others] = held;
    if (!first || core.includes(id)) continue;
    if (others.every(([, value]) => isSame(id, first[1], value))) continue;
    found.push({
      is: 'rival tables',
      tables: [...new Set(held.map(([table]) => table))],
      places: held.map(([, { place }]) => place),
      meanings: [id],
    });
  }
  return found;
}

function isSame(id: MeaningId, one: ReadValue, other: ReadValue): boolean {
  if (meaning(id).holds === 'number') return sameValue(one.amount, other.amount);
  return !exclusive.includes(id) || headerKey(one.text) === headerKey(other.text);
}

/** Whether two numbers are the same in one unit; where one is missing they contradict nothing. */
function sameValue(one: Amount | null | undefined, other: Amount | null | undefined): boolean {
  if (!one || !other) return true;
  if (one.unit?.dimension !== other.unit?.dimension) return false;
  const there = one.unit && other.unit ? convert(other.value, other.unit, one.unit) : other.value;
  return Math.abs(one.value - there) <= 1e-9 * Math.max(Math.abs(one.value), Math.abs(there));
}
