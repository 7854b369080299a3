import { optionText } from '../../../audit/advise/questions/optionText.ts';
import type { Field } from '../../../audit/read/understand/fields/field.ts';
import { meaning, type MeaningId } from '../../../audit/read/understand/meaning.ts';
import { fieldAnswer, optionOf } from '../../../audit/read/understand/questions/fieldQuestions.ts';
import type { FieldOption, Option, Question } from '../../../audit/read/understand/questions/question.ts';
import { mergeMaps } from '../../../audit/read/understand/answers/merge.ts';
import { fitsMeaning } from '../../../audit/read/understand/tables/units.ts';
import type { TableRead } from '../../../audit/read/understand/tables/tableRead.ts';
import type { Choice } from './askedRow.ts';
import { areaOfField } from './places.ts';

/** Whether the cells of a field hold anything that a meaning could be read from, in a unit that fits it or in none. */
export function canHold({ values, units }: Field, id: MeaningId): boolean {
  const wanted = meaning(id);
  if (values.filled === 0) return false;
  if (wanted.holds !== 'number') return true;
  const fits = units.length === 0 || units.some(({ stated }) => fitsMeaning(stated, wanted));
  return fits && (values.numbers > 0 || values.cellUnits.size > 0);
}

/**
 * The choice that a field of a table has a meaning, in all tables of one layout that were asked about together. Where the
 * question was about other tables, those are said to have no such field.
 */
export function fieldChoice(
  id: MeaningId,
  table: TableRead,
  field: Field,
  asked: readonly TableRead[],
): Choice {
  const own = fieldAnswer(table, id, field);
  const isAsked = asked.some(({ lane }) => lane.id === table.lane.id);
  const answer = asked.reduce((map, other) => {
    if (other.lane.id === table.lane.id) return map;
    const alike = isAsked ? sameIn(other, field) : null;
    return alike === undefined ? map : mergeMaps(map, fieldAnswer(other, id, alike));
  }, own);
  const shown = optionOf(field);
  const label = labelOf(id, { field: shown, text: field.text, answer: own });
  return { label, field: shown, unit: shown.unit, place: areaOfField(field), answer };
}

/** The field at the same place and with the same header in a table of the same layout. */
function sameIn({ lane }: TableRead, { place, text }: Field): Field | undefined {
  return lane.fields.find((other) => other.place.at === place.at && other.text === text);
}

/** Choices for the fields of tables of one layout that are no options of a question about them. */
export function otherFields(
  id: MeaningId,
  asked: readonly TableRead[],
  options: readonly Option[],
): Choice[] {
  const [table] = asked;
  if (!table) return [];
  const offered = options.flatMap(({ field }) => (field ? [cellOf(field)] : []));
  return table.lane.fields
    .filter((field) => canHold(field, id) && !offered.includes(cellOf(optionOf(field))))
    .map((field) => fieldChoice(id, table, field, asked));
}

/** The choice that a table has no field of a meaning. */
export function noFieldChoice(id: MeaningId, table: TableRead): Choice {
  const answer = fieldAnswer(table, id, null);
  const label = labelOf(id, { field: null, text: '', answer });
  return { label, field: null, unit: null, place: null, answer };
}

function labelOf(id: MeaningId, option: Option): string {
  const question: Question = {
    id: '',
    needed: meaning(id).needed,
    records: 0,
    subject: { is: 'field', meaning: id },
    evidence: [],
    sheets: [],
    options: [option],
  };
  return optionText(question, option).label;
}

function cellOf({ sheet, place }: FieldOption): string {
  return JSON.stringify([sheet, place.row, place.column]);
}
