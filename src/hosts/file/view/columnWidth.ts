/** Width in pixels of a digit of the usual font, 11 points at 96 dots an inch (ECMA-376 part 1, section 18.3.1.13). */
const digit = 7;

/** Pixels of a width as `col` elements store it, in digits with padding (ECMA-376 part 1, section 18.3.1.13). */
export function widthInPixels(stored: number): number {
  return Math.trunc(((256 * stored + Math.trunc(128 / digit)) / 256) * digit);
}

/** Pixels of a width that is given in digits alone, without the padding of five pixels, rounded up to a multiple of 8 as programs do (common practice, no source). */
export function digitsInPixels(digits: number): number {
  return Math.ceil((digits * digit + 5) / 8) * 8;
}
