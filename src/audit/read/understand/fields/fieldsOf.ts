import type { Sheet } from '../../../../cells/sheet.ts';
import { cellText } from '../../../../cells/cell.ts';
import { cellAt } from '../../../../cells/sheet.ts';
import type { Block, FieldPlace, HeaderPart, Place } from '../blocks/block.ts';
import { readHeader, readUnitPart, type HeaderRead } from '../vocabulary/headerText.ts';
import { statedUnit } from '../vocabulary/statedUnit.ts';
import type { Concept } from '../vocabulary/wordList.ts';
import { hardQuantities } from '../meaning.ts';
import type { ConceptFact, Field, UnitFact } from './field.ts';
import { valueFacts } from './valueFacts.ts';

/** The fields of a block with their facts. */
export function fieldsOf(block: Block, sheets: ReadonlyMap<string, Sheet>): Field[] {
  const fields = block.fields.map((place) => fieldOf(block, sheets, place));
  return fields.map((field) => {
    const next = fields.find(({ place }) => place.at === field.place.at + 1);
    const besideOf = next ? unitColumnOf(next) : null;
    return besideOf === null ? field : { ...field, besideOf };
  });
}

/** What a column of units measures, by the first of them; `null` where it is none. */
function unitColumnOf({ values, units }: Field): Field['besideOf'] {
  if (values.numbers > 0 || units.length > 0 || values.units === 0 || values.units * 2 < values.texts)
    return null;
  return statedUnit(values.samples[0]?.text ?? '')?.unit?.dimension ?? null;
}

function fieldOf(block: Block, sheets: ReadonlyMap<string, Sheet>, place: FieldPlace): Field {
  const parts = place.header.map(
    ({ text }, at) => (at > 0 ? readUnitPart(text) : undefined) ?? readHeader(text),
  );
  const whole = readHeader(place.header.map(({ text }) => text).join(' '));
  const leaf = parts.at(-1);
  const concepts = conceptsOf(place.header, parts);
  const isTold =
    concepts.size > 0 || parts.some(({ unit, standard }) => unit !== null || standard.length > 0);
  const values = valueFacts(block, sheets, place, isTold);
  return {
    block,
    place,
    text: place.header.map(({ text }) => text.replace(/\s+/gu, ' ').trim()).join(' / '),
    parts,
    concepts,
    standard: standardOf(parts, whole),
    units: [...unitsOf(block, place, parts, values.cellUnits.size), ...unitOfForms(block, sheets, place)],
    besideOf: null,
    coverage: parts.findLast(({ coverage }) => coverage !== null)?.coverage ?? null,
    years: parts.flatMap(({ years }) => years),
    remarks: leaf?.remarks ?? [],
    values,
  };
}

/** The concepts of a header path: a quantity named further down holds in place of the one above it. */
function conceptsOf(
  header: readonly HeaderPart[],
  parts: readonly HeaderRead[],
): ReadonlyMap<Concept, ConceptFact> {
  const facts = new Map<Concept, ConceptFact>();
  let named = false;
  for (let at = parts.length - 1; at >= 0; at--) {
    const [part, read] = [header[at], parts[at]];
    if (!part || !read) continue;
    let names = false;
    for (const [concept, strength] of read.concepts) {
      const isQuantity = hardQuantities.has(concept);
      if ((isQuantity || concept === 'remark' || concept === 'other') && named) continue;
      names ||= isQuantity && strength === 'strong';
      const there = facts.get(concept);
      if (there?.strength === 'strong' || (there && strength === 'weak')) continue;
      facts.set(concept, { concept, strength, covers: part.covers, text: part.text });
    }
    named ||= names || (read.unit !== null && read.name !== '');
  }
  return facts;
}

/** A standard header: the last part by itself, or all parts together, as in `As found` over `Sensitivity`. */
function standardOf(parts: readonly HeaderRead[], whole: HeaderRead): Field['standard'] {
  const named = parts.filter(({ name }) => name !== '');
  if (named.length === 1) return named[0]?.standard ?? [];
  if (whole.standard.length > 0) return whole.standard;
  const leaf = named.at(-1)?.standard ?? [];
  const groups = named.slice(0, -1);
  return groups.every((group) => [...group.concepts.keys()].every((concept) => neutral.has(concept)))
    ? leaf
    : [];
}

/** Groups that change nothing about what stands below them. */
const neutral: ReadonlySet<Concept> = new Set<Concept>([
  'setpoint',
  'tag',
  'machine',
  'location',
  'ordinal',
  'kind',
  'remark',
]);

function unitsOf(block: Block, place: FieldPlace, parts: readonly HeaderRead[], inCells: number): UnitFact[] {
  const facts: UnitFact[] = [];
  for (let at = parts.length - 1; at >= 0; at--) {
    const [part, read] = [place.header[at], parts[at]];
    if (!part || !read?.unit) continue;
    const where: Place = { sheet: block.sheet.name, row: part.row, column: part.column };
    facts.push({ stated: read.unit, scope: part.covers === 'own' ? 'header' : 'group', place: where });
  }
  if (block.lies === 'columns' && block.unitLine !== null) {
    const stated = statedUnit(cellText(cellAt(block.sheet, place.at, block.unitLine)));
    if (stated)
      facts.push({
        stated,
        scope: 'header',
        place: { sheet: block.sheet.name, row: place.at, column: block.unitLine },
      });
  }
  const shown = inCells > 0 ? undefined : shownText(block, place);
  if (shown) facts.push(shown);
  return facts;
}

/** The unit that number formats show with all numbers of a field. */
function shownText(block: Block, place: FieldPlace): UnitFact | undefined {
  if (block.lies === 'forms') return undefined;
  const [first, last] = block.span;
  const runs = (block.sheet.shownTexts ?? []).filter(({ area }) =>
    block.lies === 'rows'
      ? area.left === place.at && area.top <= last && area.bottom >= first
      : area.left >= first && area.left <= last && area.top <= place.at && area.bottom >= place.at,
  );
  const [run] = runs;
  if (!run || runs.some(({ text }) => text !== run.text)) return undefined;
  const stated = statedUnit(run.text);
  return (
    stated && {
      stated,
      scope: 'format',
      place: { sheet: block.sheet.name, row: run.area.top, column: run.area.left },
    }
  );
}

/** The unit that stands beside the values of a label in every form. */
function unitOfForms(block: Block, sheets: ReadonlyMap<string, Sheet>, place: FieldPlace): UnitFact[] {
  const places = block.formUnits.flatMap((units) => units.get(place.at) ?? []);
  const texts = new Set(
    places.map(({ sheet, row, column }) => cellText(sheets.get(sheet)?.rows[row - 1]?.[column - 1] ?? null)),
  );
  const [text] = texts;
  const stated = texts.size === 1 && text !== undefined ? statedUnit(text) : undefined;
  return stated ? [{ stated, scope: 'header', place: places[0] ?? null }] : [];
}
