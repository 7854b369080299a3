/** "Page n of m" in the codes of page headers and footers (ECMA-376 part 1, section 18.3.1.46). */
export const pageNumbers = 'Page &P of &N';

/** Greatest length of a footer with its codes (common practice of spreadsheet programs, no source). */
const longest = 255;

/**
 * A text for the left of a page footer that has `pageNumbers` at its right: on one line, ampersands doubled, since one
 * begins a code. A text too long for a footer ends in an ellipsis.
 */
export function footerText(text: string): string {
  const room = longest - pageNumbers.length - '&L&R'.length;
  return fitted(text.replace(/[\p{Cc}\p{Surrogate}\uFFFE\uFFFF]+/gu, ' '), room);
}

function fitted(text: string, room: number): string {
  const doubled = text.replaceAll('&', '&&');
  if (doubled.length <= room) return doubled;
  let result = '';
  for (const character of text) {
    const next = character === '&' ? '&&' : character;
    if (result.length + next.length > room - 1) break;
    result += next;
  }
  return `${result}…`;
}
