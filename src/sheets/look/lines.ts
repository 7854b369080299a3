/** Height of one line of text at the default size, and of the tallest row that is made for a long text, in points. */
const lineHeight = 15;

/** Letters are narrower than the digits that widths are counted in, bold ones hardly; words do not break to the letter. */
const lettersPerWidth = 1;

/**
 * Height for a row of wrapped texts in columns of these widths (characters), between one and `most` lines. Stated because
 * merged cells do not grow by themselves. A width of 0 is a column that does not wrap.
 */
export function heightOf(texts: readonly string[], widths: readonly number[], most = 8): number {
  let lines = 1;
  texts.forEach((text, index) => {
    const width = widths[index] ?? 0;
    if (width > 0) lines = Math.max(lines, linesOf(text, width * lettersPerWidth));
  });
  return lineHeight * Math.min(lines, most);
}

function linesOf(text: string, width: number): number {
  if (text.length <= width && !text.includes('\n')) return 1;
  let lines = 0;
  for (const part of text.split('\n')) lines += Math.max(1, Math.ceil(part.length / width));
  return lines;
}
