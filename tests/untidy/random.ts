/** Draws that repeat from one number: the same number gives the same workbook on every machine. */
export interface Random {
  /** From 0 up to, not including, 1. */
  readonly part: () => number;
  /** A whole number, both ends included. */
  readonly whole: (from: number, to: number) => number;
  readonly chance: (share: number) => boolean;
  readonly pick: <T>(list: readonly T[]) => T;
  /** One of the entries, in proportion to their weights. */
  readonly weighted: <T extends { readonly weight: number }>(list: readonly T[]) => T;
  readonly shuffled: <T>(list: readonly T[]) => T[];
}

/** Mulberry32 (public domain, from memory): small, and good enough to choose layouts by. */
export function randomFrom(number: number): Random {
  let state = number >>> 0;
  const part = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  const whole = (from: number, to: number): number => from + Math.floor(part() * (to - from + 1));
  return {
    part,
    whole,
    chance: (share) => part() < share,
    pick: (list) => list[whole(0, list.length - 1)]!,
    weighted: (list) => {
      let rest = part() * list.reduce((sum, { weight }) => sum + weight, 0);
      for (const one of list) {
        rest -= one.weight;
        if (rest < 0) return one;
      }
      return list[list.length - 1]!;
    },
    shuffled: (list) => {
      const all = [...list];
      for (let last = all.length - 1; last > 0; last--) {
        const other = whole(0, last);
        [all[last], all[other]] = [all[other]!, all[last]!];
      }
      return all;
    },
  };
}
