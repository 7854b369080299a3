import { cellText } from '../../../../cells/cell.ts';
import type { Sheet } from '../../../../cells/sheet.ts';
import { tagKey } from '../../tables/tagKey.ts';
import { isHiddenRecord, recordsOf } from '../blocks/block.ts';
import type { Field } from '../fields/field.ts';
import { cellOfBlock } from '../fields/valueFacts.ts';
import { axisOf } from '../vocabulary/valueWords.ts';
import type { Lane } from './lane.ts';

/** Records whose names with the probe beside them have to differ. */
const mostly = 0.9;
/** Part of a column's texts that name a probe: the others may be those of a thrust position. */
const axesAtLeast = 0.6;

/** The column that tells the probes of one place apart, as `X` and `Y` beside a bearing; `undefined` where there is none. */
export function probeField(
  { block, fields, axis }: Lane,
  sheets: ReadonlyMap<string, Sheet>,
): Field | undefined {
  if (axis !== null) return undefined;
  return fields.find((field) => {
    const { values, units, standard } = field;
    if (values.lettered === 0 || values.lettered < values.compared || values.numbers > 0) return false;
    if (values.distinct < 2 || units.length > 0 || standard.some(({ id }) => id === 'tag')) return false;
    let [filled, named] = [0, 0];
    for (const record of recordsOf(block)) {
      const text = cellText(cellOfBlock(block, sheets, field.place, record));
      if (text === '') continue;
      filled++;
      if (axisOf(text)) named++;
    }
    return named >= filled * axesAtLeast;
  });
}

/** Whether a name stands in the first line of its probes alone, with blanks beside the others. */
export function namesFirstAlone(
  { block }: Lane,
  name: Field,
  probe: Field,
  sheets: ReadonlyMap<string, Sheet>,
): boolean {
  let [blank, named] = [0, 0];
  for (const record of recordsOf(block)) {
    const text = (field: Field) => cellText(cellOfBlock(block, sheets, field.place, record));
    if (text(probe) === '') continue;
    if (text(name) === '') blank++;
    else named++;
  }
  return named > 0 && blank * 3 >= named;
}

/** Whether the names of a column, those of the line above where it is blank, differ with those of the probes beside them, of each machine. */
export function differByProbe(
  { block }: Lane,
  name: Field,
  probe: Field,
  machine: Field | null,
  sheets: ReadonlyMap<string, Sheet>,
): boolean {
  const seen = new Set<string>();
  let filled = 0;
  let of = '';
  let place = '';
  for (const record of recordsOf(block)) {
    if (isHiddenRecord(block, record)) continue;
    const text = (field: Field) => cellText(cellOfBlock(block, sheets, field.place, record));
    if (machine) of = text(machine) || of;
    const which = text(probe);
    place = text(name) || place;
    if (place === '' || which === '') continue;
    filled++;
    seen.add(`${of}\n${tagKey(place)}\n${tagKey(which)}`);
  }
  return filled > 1 && seen.size >= filled * mostly;
}
