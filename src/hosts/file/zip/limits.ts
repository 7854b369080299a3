/** How much a file may hold before it is refused. Every limit is the greatest value still accepted. */
export interface ReadLimits {
  /** Bytes of all parts together, unpacked. */
  readonly unpackedBytes: number;
  /** Parts in the file. */
  readonly entries: number;
  /**
   * Cells of all sheets: the rows down to each sheet's last filled one, each counted to its last filled cell
   * plus one for the row itself, and the cells that merges cover.
   */
  readonly cells: number;
  /** Elements nested in one another in a part. */
  readonly depth: number;
  /** Characters of one text, give or take a chunk: a spreadsheet cell holds 32,767, written with escapes seven times that. */
  readonly textLength: number;
}

/**
 * Wide enough for the largest sheets people audit, narrow enough that a hostile file ends in time and not in exhausted
 * memory. How small a file packs its parts says nothing: honest sheets packed anew reach 250 : 1 and more.
 */
export const defaultLimits: ReadLimits = {
  unpackedBytes: 2 ** 30,
  entries: 10_000,
  cells: 20_000_000,
  depth: 100,
  textLength: 2 ** 20,
};
