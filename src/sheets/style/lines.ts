import { widthOfText } from './textWidth.ts';

/** Height of one line of text at the default size, and of the tallest row that is made for a long text, in points. */
const lineHeight = 15;

/**
 * Height for a row of wrapped texts in columns of these widths (characters), between one and `most` lines. Stated because
 * merged cells do not grow by themselves. A width of 0 is a column that does not wrap.
 */
export function heightOf(texts: readonly string[], widths: readonly number[], most = 8): number {
  let lines = 1;
  for (let index = 0; index < widths.length; index++) {
    const [text, width] = [texts[index] ?? '', widths[index] ?? 0];
    if (width > 0 && text !== '') lines = Math.max(lines, linesOf(text, width));
  }
  return lineHeight * Math.min(lines, most);
}

/** Lines that a text takes in a column, broken between words, and inside a word that is longer than the column. */
function linesOf(text: string, width: number): number {
  if (!text.includes('\n')) return linesOfPart(text, width);
  return text.split('\n').reduce((lines, part) => lines + linesOfPart(part, width), 0);
}

const gap = widthOfText(' ');

function linesOfPart(text: string, width: number): number {
  let lines = 1;
  let used = 0;
  for (let from = 0; from <= text.length;) {
    const space = text.indexOf(' ', from);
    const to = space < 0 ? text.length : space;
    const length = widthOfText(text, from, to);
    if (used > 0 && used + gap + length > width) {
      lines++;
      used = 0;
    } else if (used > 0) used += gap;
    const broken = Math.max(0, Math.ceil(length / width) - 1);
    lines += broken;
    used += length - broken * width;
    from = to + 1;
  }
  return lines;
}
