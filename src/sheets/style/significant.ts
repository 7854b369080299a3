const most = 6;

/**
 * Decimals with which values near `size` show about four significant digits, 0 to 6: 5 → 3, 125 → 1, 0.35 → 4.
 * 3 where there is no size to go by. Any sign and unit.
 */
export function decimalsFor(size: number | null): number {
  if (size === null || size === 0 || !Number.isFinite(size)) return 3;
  return Math.min(most, Math.max(0, 3 - Math.floor(Math.log10(Math.abs(size)))));
}

/**
 * Decimals of a level that was worked out: one digit finer than the step of its instrument, three significant digits of
 * `size` where no step is known, 0 to 6. Steps of 0.1 → 2; 158 without → 0. The same as in sentences.
 */
export function levelDecimals(size: number | null, resolution: number | null): number {
  if (resolution !== null && resolution > 0)
    return Math.min(most, Math.max(0, Math.ceil(-Math.log10(resolution) - 1e-9) + 1));
  return Math.max(0, decimalsFor(size) - 1);
}

/** Every number of decimals that `decimalsFor` gives. */
export const decimalCounts: readonly number[] = Array.from({ length: most + 1 }, (_, count) => count);

const levelStyles = decimalCounts.map((decimals) => `level${decimals}`);
const signedStyles = decimalCounts.map((decimals) => `signed${decimals}`);

/** Names of the styles of levels and of differences of levels with these decimals; the same texts for all cells. */
export function stylesOfLevels(decimals: number): { readonly level: string; readonly signed: string } {
  const [level, signed] = [levelStyles[decimals], signedStyles[decimals]];
  if (level === undefined || signed === undefined) throw new RangeError(`no style of ${decimals} decimals`);
  return { level, signed };
}

/** The style of a number that was given: as it is where a few digits say it, else as one that was worked out. */
export function givenStyle(value: number | null): string {
  if (value === null || Number.isInteger(value)) return 'given';
  const decimals = decimalsFor(value);
  const isShort = Math.abs(Number(value.toFixed(decimals)) - value) <= 1e-9 * Math.abs(value);
  return isShort ? 'given' : stylesOfLevels(decimals).level;
}

/** Ends a number format with the room of a digit, so that the text in the next column stands apart. */
const gap = '_0';

/** A number format with fixed decimals: 2 → `0.00`, with a gap after it. */
export function fixedFormat(decimals: number): string {
  return `0${decimals === 0 ? '' : `.${'0'.repeat(decimals)}`}${gap}`;
}

/** The same with the sign always shown. */
export function signedFormat(decimals: number): string {
  const plain = fixedFormat(decimals);
  return `+${plain};-${plain};${plain}`;
}
