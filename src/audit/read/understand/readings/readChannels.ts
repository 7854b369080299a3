import type { Sheet } from '../../../../cells/sheet.ts';
import type { Steps } from '../../../model/steps.ts';
import { tagKey } from '../../tables/tagKey.ts';
import type { Said } from '../answers/said.ts';
import type { MeaningId } from '../meanings/meaning.ts';
import type { Claim } from '../tables/claim.ts';
import type { TableRead } from '../tables/tableRead.ts';
import type { ReadChannel, ReadValue, Trouble } from './channel.ts';
import { joinLines, type JoinedLines } from './join.ts';
import { contradictions, sameValue } from './contradictions.ts';
import { kindContradiction, kindOf } from './kindOf.ts';
import { ofScale } from './ofScale.ts';
import type { PlacedNote } from './note.ts';
import { readField, type FieldRead } from './readField.ts';
import { linesOf, tagsBesideOthers, type Line } from './records.ts';

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
  said: Said,
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
  const open = new Set(joined.troubles.flatMap((trouble: Trouble) => trouble.meanings));
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
