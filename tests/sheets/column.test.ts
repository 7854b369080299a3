import { describe, expect, it } from 'vitest';
import { blockList, columnList } from '../../src/sheets/column.ts';

interface Line {
  readonly gap: number;
  readonly note: string;
}

const columns = [
  { id: 'gap', header: 'Gap', width: 9, style: 'given', value: ({ gap }: Line) => gap },
  {
    id: 'half',
    header: 'Half',
    width: 9,
    style: 'given',
    value: ({ gap }: Line) => gap / 2,
    formula: '[gap]/2',
  },
  { id: 'note', header: 'Note', width: 10, style: 'wrapped', value: ({ note }: Line) => note },
] as const;

describe('columns declared as data', () => {
  const list = columnList<Line>(columns);

  it('a formula finds its cells by the names of columns', () => {
    expect(list.formulas).toEqual(['A{r}/2']);
    expect(() => list.spelled('[none]+1')).toThrow('none');
  });

  it('other cells stand in the columns that they name, in a row as tall as their texts', () => {
    const note = { value: 'ten letters and ten more', style: 'wrapped' };
    expect(list.arranged({ note })).toEqual({ height: 45, cells: [undefined, undefined, note] });
    expect(() => list.arranged({ none: note })).toThrow('none');
  });

  it('a block takes the widths of the list above it, and its rows the usual height', () => {
    const row = blockList<Line>(columns).row({ gap: 3, note: 'ten letters and ten more' });
    expect(row.height ?? 15).toBe(15);
    expect(row.cells.map((one) => one?.value)).toEqual([3, 1.5, 'ten letters and ten more']);
  });
});
