import { columnLetters } from '../../../../cells/address.ts';
import type { MappedTable } from '../../../model/columnMap.ts';
import type { Block } from '../blocks/block.ts';
import type { Field } from '../fields/field.ts';
import type { Lane } from '../tables/lane.ts';

/** How a map names a lane. */
export function mappedTableOfLane({ block, axis, context }: Lane): MappedTable {
  const [first, last] = block.header;
  const name = (line: number) => (block.lies === 'columns' ? columnLetters(line) : line);
  return {
    sheet: block.sheet.name,
    header: name(first),
    ...(last > first && block.lies === 'rows' ? { headerTo: name(last) } : {}),
    ...(block.lies === 'rows' ? {} : { lies: block.lies }),
    ...(block.lies === 'rows' && context.hasBeside ? { from: columnLetters(firstColumn(block)) } : {}),
    ...(axis ? { probe: axis.name } : {}),
  };
}

/** The first column of a block whose records are rows. */
export function firstColumn({ fields }: Block): number {
  return Math.min(...fields.map(({ at }) => at));
}

/** What tells a lane from all others of its workbook, as a part of the ids of questions. */
export function laneKey({ block, axis, context }: Lane): string {
  const from = block.lies === 'rows' && context.hasBeside ? columnLetters(firstColumn(block)) : '';
  return [block.sheet.name, block.header[0], from, axis?.name ?? ''].filter((part) => part !== '').join(' ');
}

/** How a map names a field: its column's letters, its row, or its label. */
export function fieldName(field: Field): string {
  const { block, place } = field;
  if (block.lies === 'rows') return columnLetters(place.at);
  return block.lies === 'columns' ? String(place.at) : field.text;
}
