/** How a row of a sheet and one of its model belong together; only one of them where a row was taken away or added. */
export type AlignedRow<Wanted, Found> =
  | { readonly kind: 'pair'; readonly wanted: Wanted; readonly found: Found; readonly row: number }
  | { readonly kind: 'removed'; readonly wanted: Wanted; readonly row: number }
  | { readonly kind: 'added'; readonly found: Found; readonly row: number };

/** Rows that are looked ahead for where both go on alike. */
const reach = 40;

/**
 * Goes along the wanted rows and those found, and tells rows that were taken away or added from rows that were edited: a
 * row that is not alike is passed over where the next ones are alike without it. `row`: number in the sheet, from 1.
 */
export function* alignedRows<Wanted, Found>(
  wanted: Iterator<Wanted>,
  found: readonly Found[],
  alike: (wanted: Wanted, found: Found) => boolean,
): Generator<AlignedRow<Wanted, Found>> {
  const ahead: Wanted[] = [];
  const look = (index: number): Wanted | undefined => {
    while (ahead.length <= index) {
      const next = wanted.next();
      if (next.done) return undefined;
      ahead.push(next.value);
    }
    return ahead[index];
  };
  const goOn = (index: number, at: number): boolean => {
    const [one, other] = [look(index), found[at]];
    return one !== undefined && other !== undefined && alike(one, other);
  };
  let at = 0;
  /** Whether the next row belongs elsewhere: without it both go on alike, and with it they don't. */
  const isApart = (goesOn: (by: number) => boolean): boolean => {
    const ends = look(1) === undefined && found[at + 1] === undefined;
    if (ends || goOn(0, at) || goOn(1, at + 1)) return false;
    for (let by = 1; by <= reach; by++) if (goesOn(by)) return true;
    return false;
  };
  for (;;) {
    const one = look(0);
    const other = found[at];
    const row = at + 1;
    if (one !== undefined && (other === undefined || isApart((by) => goOn(by, at)))) {
      yield { kind: 'removed', wanted: one, row };
      ahead.shift();
    } else if (other !== undefined && (one === undefined || isApart((by) => goOn(0, at + by)))) {
      yield { kind: 'added', found: other, row };
      at++;
    } else if (one !== undefined && other !== undefined) {
      yield { kind: 'pair', wanted: one, found: other, row };
      ahead.shift();
      at++;
    } else return;
  }
}
