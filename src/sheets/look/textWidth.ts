const narrow = new Set(" .,:;'’‘|!ijlI()[]f-–·");
const middling = new Set('rtsJ/"“”');
const broad = new Set('mwMW%@…∞');

/**
 * Width of a text in digits of the same font, in which columns are measured; a little more than it takes in the usual
 * sans-serif fonts of spreadsheets (widths of their letters, from memory), twice for the square letters of East Asia.
 */
export function widthOfText(text: string): number {
  let width = 0;
  for (const letter of text) {
    if (narrow.has(letter)) width += 0.58;
    else if (middling.has(letter)) width += 0.76;
    else if (broad.has(letter)) width += 1.6;
    else if (letter >= '\u2e80') width += 2.05;
    else if (letter >= 'A' && letter <= 'Z') width += 1.25;
    else width += 1.02;
  }
  return width;
}
