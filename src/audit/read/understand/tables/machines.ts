import { labelText, type ContextText } from '../blocks/context.ts';
import { conceptsIn, tokensOf } from '../vocabulary/lexicon.ts';
import { readHeader } from '../vocabulary/headerText.ts';
import { statedUnit } from '../vocabulary/statedUnit.ts';
import { listWords } from '../vocabulary/valueWords.ts';
import { holdsOneOf, type Concept } from '../vocabulary/wordList.ts';
import type { Lane } from './lane.ts';
import type { TableMachine } from './tableRead.ts';

/** The machine that a label above a table names: `Machine` with a name beside it. */
export function labelledMachine({ context }: Lane): TableMachine | null {
  for (const text of context.titles) {
    const found = fromLabel(text);
    if (found) return found;
  }
  const ofSheet = context.ofSheet.flatMap((text) => fromLabel(text) ?? []);
  const [only, second] = ofSheet;
  if (!only || second) return null;
  return context.hasBeside ? { ...only, standing: 'proposed' } : only;
}

function fromLabel(text: ContextText): TableMachine | null {
  const label = labelText(text);
  if (text.value === null || text.value === '' || text.value === text.text) return null;
  const { concepts } = readHeader(label);
  const isMachine =
    concepts.has('machine') &&
    statedUnit(text.value) === undefined &&
    !concepts.has('person') &&
    !concepts.has('date');
  return isMachine
    ? {
        name: text.value,
        evidence: { is: 'label', label, value: text.value, place: text.place },
        standing: 'certain',
      }
    : null;
}

const namesList = holdsOneOf(listWords);
/** A year by itself: the name of a round of tests. */
const isDated = /(?<!\d)(?:19|20)\d\d(?!\d)/u;
/** Concepts that a machine's name can have. */
const ofMachines: ReadonlySet<Concept> = new Set<Concept>([
  'machine',
  'location',
  'ordinal',
  'other',
  'tolerance',
]);

/** Whether the name of a sheet or a heading can be that of a machine: no word of lists, and nothing of a quantity. */
export function canBeMachine(name: string): boolean {
  return (
    tokensOf(name).length > 0 &&
    !namesList(name) &&
    !isDated.test(name) &&
    [...conceptsIn(name).keys()].every((concept) => ofMachines.has(concept))
  );
}

/** The sheet's name as the machine of its list, where it can be one. */
export function machineOfSheet(lane: Lane): TableMachine | null {
  const { name } = lane.block.sheet;
  if (!canBeMachine(name)) return null;
  return { name, evidence: { is: 'sheet name', sheet: name }, standing: 'certain' };
}

/** The heading right above a list as its machine: a person has to say so. */
export function machineOfHeading(lane: Lane): TableMachine | null {
  const [nearest] = lane.context.titles;
  if (!nearest || nearest.value !== null || nearest.text.length > 60) return null;
  if (
    lane.context.ofSheet.some(({ place }) => place.row === nearest.place.row) &&
    lane.block.header[0] - nearest.place.row > 1
  )
    return null;
  return {
    name: nearest.text,
    evidence: { is: 'heading', text: nearest.text, place: nearest.place },
    standing: 'proposed',
  };
}
