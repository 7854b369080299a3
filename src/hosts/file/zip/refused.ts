const longestMessage = 300;

/**
 * The file cannot be read. `message` is one line for a person, at most 300 characters: what is wrong and
 * what to do about it. Text taken from the file is flattened to that line, never interpreted.
 */
export class FileRefused extends Error {
  override readonly name = 'FileRefused';

  constructor(message: string) {
    super(oneLine(message, longestMessage));
  }
}

/** Text from a file made fit to stand inside a message: no line breaks or control characters, at most `longest` characters. */
export function oneLine(text: string, longest = 60): string {
  const flat = text
    .slice(0, longest * 4)
    .replace(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\s]+/gu, ' ')
    .trim();
  return flat.length <= longest ? flat : `${flat.slice(0, longest - 1)}…`;
}
