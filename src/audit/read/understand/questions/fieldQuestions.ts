import type { ColumnMap } from '../../../model/columnMap.ts';
import { headerKey } from '../../tables/header.ts';
import { fieldName, laneKey, mappedTableOfLane } from '../answers/places.ts';
import type { Field } from '../fields/field.ts';
import { meaning, type MeaningId } from '../meaning.ts';
import type { Evidence } from '../standing/evidence.ts';
import type { TableRead } from '../tables/tableRead.ts';
import { perLayout, type AboutTable } from './perLayout.ts';
import type { FieldOption, Option, Question } from './question.ts';

/** A field as an option shows it. */
export function optionOf(field: Field): FieldOption {
  const part = field.place.header.at(-1);
  return {
    sheet: field.block.sheet.name,
    place: {
      sheet: field.block.sheet.name,
      row: part?.row ?? field.block.header[0],
      column: part?.column ?? field.place.at,
    },
    header: field.text,
    unit: field.units[0]?.stated.text ?? null,
    samples: field.values.samples.map(({ text }) => text),
  };
}

/** The answer that a field of a table has a meaning. */
export function fieldAnswer({ lane }: TableRead, id: MeaningId, field: Field | null): ColumnMap {
  const said = field === null ? null : { at: fieldName(field), header: field.text };
  return { tables: [{ ...mappedTableOfLane(lane), columns: { [meaning(id).name]: said } }] };
}

function question(
  table: TableRead,
  id: MeaningId,
  fields: readonly Field[],
  evidence: readonly Evidence[],
): AboutTable {
  const options = fields.map((field): Option => ({
    field: optionOf(field),
    text: field.text,
    answer: fieldAnswer(table, id, field),
  }));
  const none: Option = { field: null, text: '', answer: fieldAnswer(table, id, null) };
  const { block } = table.lane;
  const asked: Question = {
    id: `field ${laneKey(table.lane)} ${id}`,
    needed: meaning(id).needed,
    records: table.tag?.field.values.filled ?? block.span[1] - block.span[0] + 1,
    subject: { is: 'field', meaning: id },
    evidence,
    sheets: [block.sheet.name],
    options: [...options, none],
  };
  return [table, asked];
}

/** A meaning in lists of the same headers: what it is in one of them for certain is proposed first in the others. */
function layoutOf({ lane }: TableRead, id: MeaningId): string {
  return [id, ...lane.fields.map(({ text }) => headerKey(text)).toSorted()].join('\n');
}

/** A question for each field that is proposed for a meaning, and for each needed meaning that has no field. */
export function fieldQuestions(tables: readonly TableRead[]): Question[] {
  const found: AboutTable[] = [];
  const certain = new Set<MeaningId>();
  const alike = new Map<string, string>();
  for (const table of tables) {
    if (table.part !== 'channels') continue;
    for (const [id, claim] of table.claims) {
      const [layout, header] = [layoutOf(table, id), headerKey(claim.field.text)];
      if (claim.standing === 'certain' || !alike.has(layout)) alike.set(layout, header);
      if (claim.standing !== 'certain') continue;
      if (table.tag?.standing === 'certain') certain.add(id);
    }
  }
  for (const table of tables) {
    if (table.part === 'history' || table.part === 'checks' || table.leftOut || table.setAside) continue;
    const { claims, open, tag } = table;
    const isPart =
      table.part === 'channels' ||
      open.some(({ looksLike }) => looksLike === 'sensitivity' || looksLike === 'level');
    if (!isPart) continue;
    for (const [id, claim] of claims) {
      if (claim.standing === 'certain' || (claim.standing === 'not known' && !meaning(id).needed)) continue;
      const fields = [claim.field, ...claim.rivals];
      const told = alike.get(layoutOf(table, id));
      const first = fields.find(({ text }) => headerKey(text) === told) ?? claim.field;
      found.push(question(table, id, [first, ...fields.filter((field) => field !== first)], claim.evidence));
    }
    if (!tag && !claims.has('tag')) {
      const names = table.lane.fields.filter(
        ({ values, units }) => values.filled > 0 && values.numbers === 0 && units.length === 0,
      );
      if (names.length > 0) found.push(question(table, 'tag', names, []));
    }
    found.push(...missing(table, certain));
  }
  return perLayout(found);
}

/** Needed meanings that no table has for certain, with the fields of this one that could be them. */
function missing(table: TableRead, certain: ReadonlySet<MeaningId>): AboutTable[] {
  const { claims, open } = table;
  const found: AboutTable[] = [];
  const sensitivities = open.filter(({ looksLike }) => looksLike === 'sensitivity').map(({ field }) => field);
  const levels = open.filter(({ looksLike }) => looksLike === 'level').map(({ field }) => field);
  const rising = levels
    .filter((field) => field.block === levels[0]?.block)
    .toSorted((one, other) => one.values.median - other.values.median);
  const hasSetpoints = claims.has('alert') || claims.has('danger') || levels.length > 1;
  const nominal = claims.get('referenceSensitivity')?.field;
  for (const id of ['measured', 'configured'] as const) {
    const could = id === 'configured' && nominal ? [...sensitivities, nominal] : sensitivities;
    if (certain.has(id) || claims.has(id) || could.length === 0) continue;
    const own = could.toSorted((one, other) => Number(fits(other, id)) - Number(fits(one, id)));
    if (id === 'configured' && !hasSetpoints && claims.has('measured')) continue;
    found.push(question(table, id, own, []));
  }
  for (const id of ['alert', 'danger'] as const) {
    if (certain.has(id) || claims.has(id) || rising.length === 0) continue;
    const at = id === 'alert' ? 0 : claims.has('alert') || certain.has('alert') ? 0 : 1;
    const first = rising[at] ?? rising[0];
    found.push(
      question(table, id, first ? [first, ...rising.filter((field) => field !== first)] : rising, []),
    );
  }
  return found;
}

function fits(field: Field, id: 'measured' | 'configured'): boolean {
  const aside = field.concepts.has('old') || field.concepts.has('proposed');
  return (
    !aside &&
    (id === 'configured'
      ? field.concepts.has('configured') || field.concepts.has('reference')
      : field.concepts.has('measured') || field.concepts.has('as found'))
  );
}
