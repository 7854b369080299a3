import { columnLetters } from '../../../../cells/address.ts';
import type { TableSaid } from '../../../model/columnMap.ts';
import type { Field } from '../fields/field.ts';
import type { Lane } from '../tables/lane.ts';

/** How a map names a lane. */
export function laneSaid({ block, axis }: Lane): TableSaid {
  const [first, last] = block.header;
  const name = (line: number) => (block.lies === 'columns' ? columnLetters(line) : line);
  return {
    sheet: block.sheet.name,
    header: name(first),
    ...(last > first && block.lies === 'rows' ? { headerTo: name(last) } : {}),
    ...(block.lies === 'rows' ? {} : { lies: block.lies }),
    ...(axis ? { probe: axis.name } : {}),
  };
}

/** How a map names a field: its column's letters, its row, or its label. */
export function fieldName(field: Field): string {
  const { block, place } = field;
  if (block.lies === 'rows') return columnLetters(place.at);
  return block.lies === 'columns' ? String(place.at) : field.text;
}
