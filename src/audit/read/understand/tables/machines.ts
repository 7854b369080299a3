import { labelText, type ContextText } from '../blocks/context.ts';
import { conceptsIn, readWords } from '../vocabulary/lexicon.ts';
import { readHeader } from '../vocabulary/headerText.ts';
import { statedUnit } from '../vocabulary/statedUnit.ts';
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

/** Words that the names of sheets have that are not machines. */
const ofLists =
  /(?:sheet|tabelle|hoja|feuil|folha|foglio|list|table|data|probe|channel|setpoint|measure|test|reading|legend|note|calib|rack|monitor|panel|summary|overview)/iu;

/** The sheet's name as the machine of its list, where it can be one. */
export function machineOfSheet(lane: Lane): TableMachine | null {
  const { name } = lane.block.sheet;
  if (ofLists.test(name)) return null;
  const words = readWords(name);
  const told = [...conceptsIn(name).keys()].some(
    (concept) => concept !== 'machine' && concept !== 'location' && concept !== 'ordinal',
  );
  if (told || words.words === 0) return null;
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
