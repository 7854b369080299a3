import type { ModelValue, SheetModel, ShadeRule } from '../../../sheets/model.ts';

/** The shade of a cell by what it says, compared without case; the first rule that fits applies. */
export function shading({
  shades = [],
}: SheetModel): (row: number, column: number, value: ModelValue) => ShadeRule | undefined {
  const byWord = new Map<string, ShadeRule[]>();
  for (const rule of shades) {
    const word = rule.equals.toLowerCase();
    byWord.set(word, [...(byWord.get(word) ?? []), rule]);
  }
  return (row, column, value) =>
    typeof value === 'string'
      ? byWord
          .get(value.toLowerCase())
          ?.find(
            ({ area }) =>
              row >= area.top && row <= area.bottom && column >= area.left && column <= area.right,
          )
      : undefined;
}
