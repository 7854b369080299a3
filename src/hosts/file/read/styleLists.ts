/** The numbered lists of a style sheet in the order of the schema (ECMA-376 part 1, section 18.8.39), by what they hold. */
export const entryOf = {
  numFmts: 'numFmt',
  fonts: 'font',
  fills: 'fill',
  borders: 'border',
  cellStyleXfs: 'xf',
  cellXfs: 'xf',
  cellStyles: 'cellStyle',
  dxfs: 'dxf',
} as const;

export type StyleListName = keyof typeof entryOf;

export const styleListNames = Object.keys(entryOf) as readonly StyleListName[];

/** Whether an element is an entry of its list, by the elements around it; what else stands there is not counted. */
export function isEntry(list: StyleListName, name: string, parents: readonly string[]): boolean {
  return parents.length === 2 && parents[1] === list && name === entryOf[list];
}
