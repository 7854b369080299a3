/** Some rows of one of several sheets, on their way between the page and its worker. */
export interface RowPiece<Row> {
  readonly kind: 'rows';
  readonly sheet: number;
  readonly rows: readonly Row[];
}

/** Cells in a piece: few enough that packing or unpacking one takes some milliseconds. */
const cellsInPiece = 5_000;

/** The rows of a sheet in pieces; a message as large as a whole sheet would hold up the page while it is packed. */
export function* rowPieces<Row extends { readonly cells: readonly unknown[] }>(
  sheet: number,
  all: Iterable<Row>,
): Generator<RowPiece<Row>, void> {
  let rows: Row[] = [];
  let cells = 0;
  for (const row of all) {
    rows.push(row);
    cells += row.cells.length + 1;
    if (cells < cellsInPiece) continue;
    yield { kind: 'rows', sheet, rows };
    rows = [];
    cells = 0;
  }
  if (rows.length > 0) yield { kind: 'rows', sheet, rows };
}

export interface GatheredRows<Row> {
  readonly take: (piece: RowPiece<Row>) => void;
  /** How many pieces came. */
  readonly count: () => number;
  /** All rows of a sheet that came, in their order. */
  readonly of: (sheet: number) => readonly Row[];
}

/** Puts the rows of several sheets together again. */
export function gatheredRows<Row>(): GatheredRows<Row> {
  const sheets = new Map<number, Row[]>();
  let pieces = 0;
  return {
    count: () => pieces,
    take: ({ sheet, rows }) => {
      pieces++;
      const known = sheets.get(sheet);
      if (known) for (const row of rows) known.push(row);
      else sheets.set(sheet, [...rows]);
    },
    of: (sheet) => sheets.get(sheet) ?? [],
  };
}
