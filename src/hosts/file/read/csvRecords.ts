import { FileRefused, oneLine } from '../zip/refused.ts';

const quote = '"';

/**
 * The records of a separated text, each as its fields (RFC 4180, section 2). A field that begins with a quote
 * ends at the next single one; a doubled quote in it is one quote, and separators and line breaks in it are
 * text. Quotes elsewhere are text, so `5" pipe` needs none. Throws FileRefused where a quoted field never ends.
 */
export function* csvRecords(text: string, separator: string): Generator<string[]> {
  let at = 0;
  let record: string[] = [];
  let line = 1;
  while (at < text.length) {
    let field = '';
    if (text[at] === quote) {
      const end = closingQuote(text, at);
      if (end < 0) {
        throw new FileRefused(
          `The quote before “${oneLine(text.slice(at + 1, at + 40), 30)}” in row ${line} is never closed. Close it, or double every quote that is meant as an inch sign.`,
        );
      }
      field = text.slice(at + 1, end).replaceAll('""', quote);
      at = end + 1;
    }
    const start = at;
    while (at < text.length && text[at] !== separator && text[at] !== '\n' && text[at] !== '\r') at++;
    record.push(field + text.slice(start, at));
    if (text[at] === separator) {
      at++;
      if (at < text.length) continue;
      record.push('');
    } else if (text[at] === '\r' && text[at + 1] === '\n') at += 2;
    else at++;
    yield record;
    record = [];
    line++;
  }
}

/** Position of the quote that ends the field whose opening quote stands at `opening`; -1 where there is none. */
function closingQuote(text: string, opening: number): number {
  let at = text.indexOf(quote, opening + 1);
  while (at >= 0 && text[at + 1] === quote) at = text.indexOf(quote, at + 2);
  return at;
}
