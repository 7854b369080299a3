/**
 * Width of a column in pixels from its characters: seven pixels a character and five of padding, in the default font at 11
 * points (ECMA-376 part 1, section 18.3.1.13).
 */
export function columnPixels(characters: number): number {
  return Math.round(characters * 7 + 5);
}

/** Height of a row in pixels from points: 96 pixels and 72 points an inch (W3C, CSS Values and Units 4, section 6.2). */
export function rowPixels(points: number): number {
  return Math.round((points * 96) / 72);
}
