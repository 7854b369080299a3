import type { Cell } from '../../../cells/cell.ts';
import { FileRefused } from '../zip/refused.ts';
import { csvRecords, decimalMark } from './csv.ts';
import { separatorOf, type Separator } from './csvSeparator.ts';

/** A text table of any length: its rows come one at a time, each time anew. */
export interface CsvStream {
  readonly rows: () => Generator<readonly Cell[], void, void>;
  readonly plainText: { readonly decimal: '.' | ',' };
}

/** Lines that tell how the numbers of a file are written. */
const firstLines = 2_000;

/**
 * A table of plain text, as `readCsv` reads it, that never stands in memory whole: a row is one line, so that no field holds
 * a line break. `pieces` gives its bytes from the start, each time it is asked.
 * @throws FileRefused where it is no such text.
 */
export function csvStream(pieces: () => Iterable<Uint8Array>): CsvStream {
  const first: string[] = [];
  for (const line of linesOf(pieces())) {
    first.push(line);
    if (first.length === firstLines) break;
  }
  const { separator, body } = separatorOf(first.join('\n'));
  const skipped = body.length === first.join('\n').length ? 0 : 1;
  if (first.every((line) => line.trim() === ''))
    throw new FileRefused('The file holds no text. Save the table again, or choose another file.');
  const sample = first.slice(skipped).map((line) => fieldsOf(line, separator));
  return {
    plainText: { decimal: decimalMark(sample, separator) },
    *rows() {
      let left = skipped;
      for (const line of linesOf(pieces()))
        if (left > 0) left--;
        else yield fieldsOf(line, separator);
    },
  };
}

function fieldsOf(line: string, separator: Separator): readonly Cell[] {
  if (line === '') return [];
  if (!line.includes('"')) return line.split(separator);
  const [fields = []] = csvRecords(line, separator);
  return fields;
}

/** The lines of a text, ended by CR LF, LF or CR, in UTF-8 or, with a byte order mark, UTF-16. */
function* linesOf(pieces: Iterable<Uint8Array>): Generator<string, void, void> {
  let decoder: TextDecoder | null = null;
  let rest = '';
  for (const piece of pieces) {
    decoder ??= new TextDecoder(encodingOf(piece), { fatal: true });
    const text = rest + decoded(decoder, piece);
    let from = 0;
    for (let end = text.indexOf('\n'); end >= 0; end = text.indexOf('\n', from)) {
      const line = text.slice(from, text.charCodeAt(end - 1) === 13 && end > from ? end - 1 : end);
      if (line.includes('\r')) yield* line.split('\r');
      else yield line;
      from = end + 1;
    }
    rest = text.slice(from);
    if (rest.length > longestLine)
      throw new FileRefused(
        'A line of the file is longer than a million characters: it is no table of text.',
      );
  }
  if (decoder) rest += decoded(decoder, new Uint8Array(0), false);
  if (rest !== '') yield* (rest.endsWith('\r') ? rest.slice(0, -1) : rest).split('\r');
}

const longestLine = 1_000_000;

function encodingOf(start: Uint8Array): string {
  if (start[0] === 0xff && start[1] === 0xfe) return 'utf-16le';
  return start[0] === 0xfe && start[1] === 0xff ? 'utf-16be' : 'utf-8';
}

function decoded(decoder: TextDecoder, piece: Uint8Array, stream: boolean = true): string {
  try {
    return decoder.decode(piece, { stream });
  } catch {
    throw new FileRefused('The file is no text in UTF-8 or UTF-16. Save it as CSV UTF-8.');
  }
}
