/** Text from a workbook made fit for a terminal: no control characters, no direction marks, one line. */
export function plain(text: string, longest = 400): string {
  const flat = text.replace(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]+/gu, ' ').trim();
  return flat.length <= longest ? flat : `${flat.slice(0, longest - 1)}…`;
}

/** Breaks a text into lines of at most `width` characters: its own spaces before it stay, the later lines are indented. */
export function wrapped(text: string, width: number, indent: string): string {
  const lines: string[] = [];
  let line = '';
  const start = /^ */u.exec(text)?.[0] ?? '';
  for (const word of text.trimStart().split(' ')) {
    const room = width - (lines.length === 0 ? start : indent).length;
    if (line !== '' && line.length + 1 + word.length > room) {
      lines.push(line);
      line = word;
    } else line = line === '' ? word : `${line} ${word}`;
  }
  lines.push(line);
  return start + lines.join(`\n${indent}`);
}

/** Shows progress on standard error while a terminal watches; silent otherwise. */
export interface Progress {
  show(what: string, part: number): void;
  clear(): void;
}

/** Progress that shows at most ten times a second, and only on a terminal. */
export function progressOn(stream: NodeJS.WriteStream): Progress {
  let last = 0;
  let shown = false;
  if (!stream.isTTY) return { show: () => undefined, clear: () => undefined };
  return {
    show(what, part) {
      const now = Date.now();
      if (now - last < 100) return;
      last = now;
      shown = true;
      stream.write(`\r\u001b[2K${what} … ${Math.round(100 * Math.min(1, part))} %`);
    },
    clear() {
      if (shown) stream.write('\r\u001b[2K');
      shown = false;
    },
  };
}
