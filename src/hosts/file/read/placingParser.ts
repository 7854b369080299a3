import { SaxesParser } from 'saxes';
import { FileRefused, oneLine } from '../zip/refused.ts';

/** A parser of one part's text that knows where each opening tag starts. */
export interface PlacingParser {
  readonly parser: SaxesParser<{ xmlns: false; position: true }>;
  /** The tag that was opened last: where its `<` stands in the text, in UTF-16 units. */
  readonly tag: { readonly start: number };
  /** The refusal of this part for what is wrong with it. */
  readonly damaged: (what: string) => FileRefused;
}

/** A parser for splicing into `text`. It throws FileRefused, naming the part, for a document type and for text that is not well-formed. */
export function placingParser(text: string, part: string): PlacingParser {
  const parser = new SaxesParser({ xmlns: false, position: true });
  const tag = { start: 0 };
  const damaged = (what: string): FileRefused =>
    new FileRefused(`The workbook's part ${oneLine(part)} is damaged: ${what}.`);
  parser.on('error', (error) => {
    throw damaged(error.message);
  });
  parser.on('doctype', () => {
    throw damaged('it contains a document type, which workbooks never do');
  });
  parser.on('opentagstart', () => {
    tag.start = text.lastIndexOf('<', parser.position - 1);
  });
  return { parser, tag, damaged };
}
