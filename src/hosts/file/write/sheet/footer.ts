import { escapeXml } from '../xml/text.ts';

const pages = '&RPage &P of &N';
/** Greatest length of a footer with its codes (common practice of spreadsheet programs, no source). */
const longest = 255;

/** A page footer: the text at the left, "Page n of m" at the right. A text too long for a footer ends in an ellipsis. */
export function headerFooter(text: string): string {
  const room = longest - pages.length - '&L'.length;
  const flat = text.replace(/[\p{Cc}\p{Surrogate}\uFFFE\uFFFF]+/gu, ' ');
  const left = flat === '' ? '' : `&L${fitted(flat, room)}`;
  return `<headerFooter><oddFooter>${escapeXml(left + pages)}</oddFooter></headerFooter>`;
}

/** An ampersand begins a code and is doubled to stand for itself. */
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
