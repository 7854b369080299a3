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
  for (const whole of wholeLines(pieces())) {
    for (const line of linesIn(whole)) if (first.length < firstLines) first.push(line);
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
      for (const whole of wholeLines(pieces())) {
        const nextRow = rowsOf(whole, separator);
        for (let row = nextRow(); row !== null; row = nextRow())
          if (left > 0) left--;
          else yield row;
      }
    },
  };
}

function fieldsOf(line: string, separator: Separator): readonly Cell[] {
  if (line === '') return [];
  if (!line.includes('"')) return line.split(separator);
  const [fields = []] = csvRecords(line, separator);
  return fields;
}

/**
 * Hands out the rows of whole lines one by one, `null` after the last, each field cut straight from the text unless its line
 * holds quotes or lone carriage returns. A function and no generator: millions of rows go through it.
 */
function rowsOf(text: string, separator: Separator): () => readonly Cell[] | null {
  // Where the next of each stands; the end of the text where none does.
  const next = (what: string, from: number): number => {
    const at = text.indexOf(what, from);
    return at < 0 ? text.length : at;
  };
  let [from, quote, lone, parting] = [0, next('"', 0), next('\r', 0), next(separator, 0)];
  const waiting: string[] = [];
  return () => {
    if (waiting.length > 0) return fieldsOf(waiting.shift() ?? '', separator);
    if (from >= text.length) return null;
    const [start, end] = [from, next('\n', from)];
    from = end + 1;
    const stop = end > start && text.charCodeAt(end - 1) === carriageReturn ? end - 1 : end;
    if (quote < start) quote = next('"', start);
    if (lone < start) lone = next('\r', start);
    if (parting < start) parting = next(separator, start);
    if (quote < stop || lone < stop) {
      const [first = '', ...others] = text.slice(start, stop).split('\r');
      waiting.push(...others);
      return fieldsOf(first, separator);
    }
    if (stop === start) return [];
    const fields: string[] = [];
    let field = start;
    for (; parting < stop; parting = next(separator, field)) {
      fields.push(text.slice(field, parting));
      field = parting + 1;
    }
    fields.push(text.slice(field, stop));
    return fields;
  };
}

function* linesIn(text: string): Generator<string, void, void> {
  for (let from = 0; from < text.length;) {
    const found = text.indexOf('\n', from);
    const end = found < 0 ? text.length : found;
    const stop = end > from && text.charCodeAt(end - 1) === carriageReturn ? end - 1 : end;
    yield* text.slice(from, stop).split('\r');
    from = end + 1;
  }
}

const carriageReturn = 13;

/** A text in pieces of whole lines, ended by CR LF, LF or CR, in UTF-8 or, with a byte order mark, UTF-16. */
function* wholeLines(pieces: Iterable<Uint8Array>): Generator<string, void, void> {
  let decoder: TextDecoder | null = null;
  let rest = '';
  for (const piece of pieces) {
    decoder ??= new TextDecoder(encodingOf(piece), { fatal: true });
    const text = rest + decoded(decoder, piece);
    const end = text.lastIndexOf('\n') + 1;
    if (end > 0) yield text.slice(0, end);
    rest = text.slice(end);
    if (rest.length > longestLine)
      throw new FileRefused(
        'A line of the file is longer than a million characters: it is no table of text.',
      );
  }
  if (decoder) rest += decoded(decoder, new Uint8Array(0), false);
  if (rest !== '') yield rest;
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
