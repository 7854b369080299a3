/** How much a file may hold before it is refused. Every limit is the greatest value still accepted. */
export interface ReadLimits {
  /** Bytes of all parts together, unpacked. */
  readonly unpackedBytes: number;
  /** Unpacked over packed size of one part; parts that unpack to less than `ratioFloor` bytes are exempt. */
  readonly ratio: number;
  readonly ratioFloor: number;
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
 * Wide enough for the largest sheets people audit (a 100,000-row sheet packs 15–25 : 1, a sparse one up to
 * about 100 : 1, measured), narrow enough that a hostile file ends in seconds and not in exhausted memory.
 */
export const defaultLimits: ReadLimits = {
  unpackedBytes: 2 ** 30,
  ratio: 250,
  ratioFloor: 4 * 2 ** 20,
  entries: 10_000,
  cells: 20_000_000,
  depth: 100,
  textLength: 2 ** 20,
};
