/** Letters that fit across the printed columns. */
const across = 125;

/** A text in lines that fit across a page, broken between words where it can be. */
export function linesOf(text: string): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(/\s+/u).filter((part) => part !== '')) {
    if (line !== '' && line.length + 1 + word.length > across) {
      lines.push(line);
      line = `  ${word}`;
    } else line = line === '' ? word : `${line} ${word}`;
  }
  return line === '' ? lines : [...lines, line];
}
