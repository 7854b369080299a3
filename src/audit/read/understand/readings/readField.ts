import { cellText, isBlank } from '../../../../cells/cell.ts';
import type { Sheet } from '../../../../cells/sheet.ts';
import { type Unit, convert } from '../../../../units/unit.ts';
import { parseUnit } from '../../../../units/parse.ts';
import { readDate } from '../../rows/date.ts';
import { type Amount } from '../../rows/rowReader.ts';
import { placeIn, type Place } from '../blocks/block.ts';
import { cellOfBlock } from '../fields/valueFacts.ts';
import { meaning, type Meaning } from '../meaning.ts';
import { fitsMeaning } from '../tables/units.ts';
import type { Claim } from '../tables/claim.ts';
import type { Lane } from '../tables/lane.ts';
import { statedUnit, type StatedUnit } from '../vocabulary/statedUnit.ts';
import { cellValue, isMarkedBlank } from './cellValue.ts';
import type { CellNote, PlacedNote } from './note.ts';
import { numberStyleOf } from './numberStyle.ts';

/** What a field says of one record. */
export interface FieldRead {
  readonly place: Place;
  readonly amount: Amount | null;
  /** A share of full scale, in per cent, to be worked out once the full scale is known. */
  readonly ofScale: number | null;
  readonly text: string;
  readonly day: number | null;
  readonly notes: readonly PlacedNote[];
}

/** Numbers that a person said a cell holds, by `Sheet!row,column`; `null`: none that counts. */
export type StatedNumbers = ReadonlyMap<string, number | null>;

const noNotes: readonly PlacedNote[] = [];

/** Reads one field in one record; `undefined` where nothing stands there. */
export function readField(
  lane: Lane,
  claim: Claim,
  record: number,
  sheets: ReadonlyMap<string, Sheet>,
  said: StatedNumbers,
): FieldRead | undefined {
  const { block } = lane;
  const place = placeIn(block, claim.field.place, record);
  const cell = cellOfBlock(block, sheets, claim.field.place, record);
  if (!place || isBlank(cell) || cell === null) return undefined;
  const wanted = meaning(claim.meaning);
  const text = cellText(cell);
  const note = (one: CellNote, unusable: boolean): PlacedNote => ({
    note: one,
    meaning: claim.meaning,
    place,
    unusable,
  });
  const found = (more: Partial<FieldRead>, ...notes: readonly PlacedNote[]): FieldRead => ({
    place,
    amount: more.amount ?? null,
    ofScale: more.ofScale ?? null,
    text: more.text ?? text,
    day: more.day ?? null,
    notes: notes.length > 0 ? notes : noNotes,
  });
  if (wanted.holds === 'date') {
    if (isMarkedBlank(text)) return found({ text: '' }, note({ is: 'said blank', word: text }, false));
    const read = readDate(cell);
    return 'day' in read
      ? found({ day: read.day })
      : found({}, note({ is: 'no date', word: text, why: read.why }, true));
  }
  if (wanted.holds !== 'number') {
    return isMarkedBlank(text) && wanted.holds !== 'flag'
      ? found({ text: '' }, note({ is: 'said blank', word: text }, false))
      : found({});
  }
  const answer = said.size > 0 ? said.get(`${place.sheet}!${place.row},${place.column}`) : undefined;
  const written = cellValue(cell, numberStyleOf(block.sheet));
  if (answer === null) {
    const doubt = written.is === 'doubtful' ? written.doubt : 'remark';
    return found({}, note({ is: 'needs a person', doubt, value: null, word: text }, true));
  }
  const value =
    answer === undefined
      ? written
      : ({
          is: 'number',
          value: answer,
          unit: 'unit' in written ? written.unit : null,
          asText: false,
          percent: false,
        } as const);
  switch (value.is) {
    case 'nothing':
      return undefined;
    case 'said blank':
      return found({ text: '' }, note({ is: 'said blank', word: value.text }, false));
    case 'error':
      return found({}, note({ is: 'error', code: value.text }, true));
    case 'text':
      return found({}, note({ is: 'no number', word: value.text }, true));
    case 'doubtful':
      return found(
        {},
        note({ is: 'needs a person', doubt: value.doubt, value: value.value, word: value.text }, true),
      );
    case 'number': {
      const unit = unitOf(lane, claim, wanted, record, sheets, value.unit);
      if ('problem' in unit) return found({}, note(unit.problem, true));
      const notes: PlacedNote[] = value.asText
        ? [note({ is: 'number as text', value: value.value }, false)]
        : [];
      if (
        value.unit &&
        claim.unit.fixed &&
        value.unit.unit &&
        claim.unit.fixed.unit &&
        value.unit.unit.factor !== claim.unit.fixed.unit.factor
      ) {
        notes.push(
          note(
            { is: 'unit in the cell', value: value.value, unit: value.unit.text, of: claim.unit.fixed.text },
            false,
          ),
        );
      }
      if (unit.stated?.ofScale) return found({ ofScale: value.value }, ...notes);
      const isPercent = value.percent && unit.stated?.unit.dimension !== 'percent';
      if (isPercent)
        return found({}, note({ is: 'unit not clear', first: '%', second: unit.stated?.text ?? null }, true));
      const own = unit.stated?.unit ?? null;
      const header = claim.unit.fixed?.unit ?? null;
      const amount =
        value.unit && own && header && own.dimension === header.dimension && own.factor !== header.factor
          ? { value: convert(value.value, own, header), unit: withDetection(header, own) }
          : { value: value.value, unit: own && header && own !== header ? withDetection(own, header) : own };
      return found({ amount }, ...notes);
    }
  }
}

function withDetection(unit: Unit, other: Unit): Unit {
  const detection = unit.detection ?? other.detection;
  return detection ? { ...unit, detection } : unit;
}

type UnitRead = { readonly stated: StatedUnit | null } | { readonly problem: CellNote };

/** The unit of one number: its own, that of its header and that beside it, which must not contradict each other. */
function unitOf(
  lane: Lane,
  claim: Claim,
  wanted: Meaning,
  record: number,
  sheets: ReadonlyMap<string, Sheet>,
  inCell: StatedUnit | null,
): UnitRead {
  const { fixed, beside, strange, doubt } = claim.unit;
  if (fixed && !fitsMeaning(fixed, wanted))
    return { problem: { is: 'unit not clear', first: fixed.text, second: wanted.name } };
  if (doubt !== undefined && fixed && inCell?.unit?.detection === undefined)
    return { problem: { is: 'unit not clear', first: fixed.text, second: doubt } };
  if (inCell) {
    return fitsMeaning(inCell, wanted)
      ? { stated: inCell }
      : { problem: { is: 'unit not clear', first: inCell.text, second: fixed?.text ?? null } };
  }
  if (strange !== null && !fixed) return { problem: { is: 'unit not clear', first: strange, second: null } };
  const next = besideOf(lane, claim, wanted, record, sheets, beside);
  if (next && 'problem' in next) return fixed ? { stated: fixed } : next;
  const row = next ? next.stated : null;
  if (!row) return { stated: fixed ?? usual(wanted) };
  if (!fixed) return { stated: row };
  if (
    row.ofScale !== fixed.ofScale ||
    row.unit?.factor !== fixed.unit?.factor ||
    row.unit?.dimension !== fixed.unit?.dimension
  ) {
    return { problem: { is: 'unit not clear', first: fixed.text, second: row.text } };
  }
  if (row.unit?.detection && fixed.unit?.detection && row.unit.detection !== fixed.unit.detection)
    return { problem: { is: 'unit not clear', first: fixed.text, second: row.text } };
  return { stated: row.unit?.detection ? row : fixed };
}

function usual(wanted: Meaning): StatedUnit | null {
  const unit = wanted.usualUnit === null ? undefined : parseUnit(wanted.usualUnit);
  return unit && wanted.usualUnit !== null ? { text: wanted.usualUnit, unit, ofScale: false } : null;
}

function besideOf(
  lane: Lane,
  claim: Claim,
  wanted: Meaning,
  record: number,
  sheets: ReadonlyMap<string, Sheet>,
  beside: readonly Claim['field'][],
): UnitRead | undefined {
  let found: StatedUnit | undefined;
  let unknown: CellNote | undefined;
  const texts = beside.map((field) => ({
    right: field.place.at === claim.field.place.at + 1,
    text: cellText(cellOfBlock(lane.block, sheets, field.place, record)),
  }));
  const form = lane.block.formUnits[record]?.get(claim.field.place.at);
  const formUnit = form ? sheets.get(form.sheet)?.rows[form.row - 1]?.[form.column - 1] : undefined;
  if (typeof formUnit === 'string') texts.unshift({ right: true, text: formUnit });
  for (const { right, text } of texts) {
    if (text === '') continue;
    const stated = statedUnit(text);
    if (!stated) {
      if (!isMarkedBlank(text)) unknown ??= { is: 'unit not clear', first: text, second: null };
    } else if (fitsMeaning(stated, wanted)) {
      if (right) return { stated };
      if (found && (found.ofScale !== stated.ofScale || found.unit?.factor !== stated.unit?.factor))
        return { problem: { is: 'unit not clear', first: found.text, second: stated.text } };
      found ??= stated;
    }
  }
  if (found) return { stated: found };
  return unknown ? { problem: unknown } : undefined;
}
