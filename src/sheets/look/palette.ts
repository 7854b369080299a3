/** Dark and quiet text, and the fills of headers, captions and cells that are meant to be changed. */
export const tones = {
  ink: '1F2A33',
  quiet: '5B6770',
  header: 'E3E8EB',
  caution: 'F2F4F5',
  input: 'FFF9E8',
} as const;

/**
 * Colours told apart with every usual kind of colour vision: the palette of M. Okabe and K. Ito, "Color Universal Design",
 * 2008 (values from memory); `paleOrange` is its orange, three quarters towards white.
 */
export const palette = {
  blue: '0072B2',
  skyBlue: '56B4E9',
  orange: 'E69F00',
  paleOrange: 'F9E7BF',
  grey: 'D9D9D9',
} as const;
