import { cellAddress } from '../../../../cells/address.ts';
import { cellText } from '../../../../cells/cell.ts';
import type { Sheet } from '../../../../cells/sheet.ts';
import { placeIn, recordsOf, type Place } from '../blocks/block.ts';
import { cellOfBlock } from '../fields/valueFacts.ts';
import { meaning, type MeaningId } from '../meaning.ts';
import { cellValue, isTotal } from '../readings/cellValue.ts';
import type { ReadChannel } from '../readings/channel.ts';
import { numberStyleOf } from '../readings/numberStyle.ts';
import type { TableRead } from '../tables/tableRead.ts';
import type { Question } from './question.ts';

/** A question for each cell whose number a person has to confirm, of what was read and of what is proposed. */
export function valueQuestions(
  tables: readonly TableRead[],
  channels: readonly ReadChannel[],
  sheets: ReadonlyMap<string, Sheet>,
): Question[] {
  const found = channels.flatMap(({ tag, notes }) =>
    notes.flatMap(({ note, meaning: id, place }) =>
      note.is === 'needs a person' && note.value !== null
        ? [questionFor(id, tag, place, note.word, note.value)]
        : [],
    ),
  );
  return [...found, ...tables.flatMap((table) => ofProposed(table, sheets))];
}

/** The doubtful cells of fields that are not certain yet, so that all is asked at once. */
function ofProposed(
  { lane, claims, tag, part, leftOut }: TableRead,
  sheets: ReadonlyMap<string, Sheet>,
): Question[] {
  if (part !== 'channels' || leftOut || !tag) return [];
  const style = numberStyleOf(lane.block.sheet);
  const found: Question[] = [];
  for (const [id, claim] of claims) {
    const { needed, holds } = meaning(id);
    const isRead = claim.standing === 'certain' && tag.standing === 'certain';
    if (isRead || !needed || holds !== 'number' || claim.field.values.odd === 0) continue;
    for (const record of recordsOf(lane.block)) {
      const value = cellValue(cellOfBlock(lane.block, sheets, claim.field.place, record), style);
      const place = placeIn(lane.block, claim.field.place, record);
      if (value.is !== 'doubtful' || value.value === null || !place) continue;
      const name = cellText(cellOfBlock(lane.block, sheets, tag.field.place, record));
      if (name !== '' && !isTotal(name)) found.push(questionFor(id, name, place, value.text, value.value));
    }
  }
  return found;
}

function questionFor(id: MeaningId, tag: string, place: Place, text: string, value: number): Question {
  const address = `${place.sheet}!${cellAddress(place.row, place.column)}`;
  return {
    id: `value ${address}`,
    needed: true,
    records: 1,
    subject: { is: 'value', meaning: id, tag, place, text },
    evidence: [],
    sheets: [place.sheet],
    options: [
      { field: null, text: String(value), answer: { cells: { [address]: value } } },
      { field: null, text: '', answer: { cells: { [address]: null } } },
    ],
  };
}
