import { cellText } from '../../../../cells/cell.ts';
import type { Sheet } from '../../../../cells/sheet.ts';
import { recordsOf } from '../blocks/block.ts';
import type { Field } from '../fields/field.ts';
import { cellOfBlock } from '../fields/valueFacts.ts';
import { kindIn } from '../readings/kinds.ts';
import type { Lane } from './lane.ts';

/** Different texts that a column of kinds and places has at most. */
const mostKinds = 400;

/** A column of texts without another meaning in which words for kinds of channels stand. */
export function kindField(lane: Lane, sheets: ReadonlyMap<string, Sheet>): Field | null {
  for (const field of lane.fields) {
    const { concepts, values } = field;
    if (
      values.texts === 0 ||
      values.numbers >= values.texts ||
      concepts.has('remark') ||
      field.standard.some(({ id }) => id === 'tag' || id === 'machine')
    )
      continue;
    if (field.standard.some(({ id }) => id === 'kind')) return field;
    if (values.distinct > mostKinds) continue;
    if (values.kinds === 0) continue;
    const known = new Map<string, ReturnType<typeof kindIn>>();
    const named = concepts.has('kind') || concepts.has('location') || concepts.has('tag');
    let [told, read, filled] = [0, 0, 0];
    for (const record of recordsOf(lane.block)) {
      const text = cellText(cellOfBlock(lane.block, sheets, field.place, record));
      let kind = known.get(text);
      if (!kind && !known.has(text)) known.set(text, (kind = kindIn(text)));
      if (text !== '') filled++;
      if (kind) read++;
      if (kind && kind !== 'radial' && kind !== 'loop') told++;
    }
    if (told > 0 && (named || read * 5 >= filled * 4)) return field;
    if (read > 0 && concepts.has('kind') && !concepts.has('location')) return field;
  }
  return null;
}
