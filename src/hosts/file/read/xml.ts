import { SaxesParser } from 'saxes';
import type { Archive, ZipEntry } from '../zip/archive.ts';
import type { ReadLimits } from '../zip/limits.ts';
import { FileRefused, oneLine } from '../zip/refused.ts';
import { Branches, type Attributes } from './branches.ts';

/** Turns the bytes of one XML part into text, chunk by chunk; `flush` ends it. Both throw FileRefused for broken text. */
interface PartDecoder {
  decode(chunk: Uint8Array): string;
  flush(): string;
}

/**
 * What a reader of one part wants to hear. Element names come without their namespace prefix; those of another namespace
 * than the root's keep it. Of alternatives (`AlternateContent`) the one that counts is heard as if it stood there alone.
 */
export interface XmlHandler {
  /** `parents` are the open elements around it, outermost first. The array is reused: copy what must last. */
  open(name: string, attributes: Attributes, parents: readonly string[]): void;
  close?(name: string, parents: readonly string[]): void;
  /** A run of text or CDATA inside the element opened last; one text may come in several runs. */
  text?(text: string): void;
}

/**
 * Reads a part piece by piece with a checking XML parser. Throws FileRefused, naming part, line and column,
 * where the XML is not well formed, has a document type (and so could define entities), or exceeds `limits`.
 * `onBytes` hears how many unpacked bytes went in.
 */
export function readXml(
  archive: Archive,
  part: ZipEntry,
  limits: ReadLimits,
  handler: XmlHandler,
  onBytes?: (count: number) => void,
): void {
  const parser = createParser(part.name, limits, handler);
  let decoder: PartDecoder | undefined;
  let sinceTag = 0;
  const write = (text: string): void => {
    const lastTag = text.lastIndexOf('<');
    sinceTag = lastTag < 0 ? sinceTag + text.length : text.length - lastTag;
    if (sinceTag > limits.textLength && lastTag < 0) {
      throw refusal(part.name, 'a single text is longer than any cell can hold');
    }
    try {
      parser.write(text);
    } catch (error) {
      // What the engine throws where a comment, say, outgrows the longest string there can be.
      throw error instanceof RangeError ? refusal(part.name, 'a piece of it is too long') : error;
    }
  };
  archive.stream(part, (chunk) => {
    decoder ??= partDecoder(part.name, chunk);
    write(decoder.decode(chunk));
    onBytes?.(chunk.length);
  });
  write(decoder?.flush() ?? '');
  parser.close();
}

/** The attribute of that local name under any prefix, as `r:id` is `id` whatever the file calls its namespaces. */
export function prefixedAttribute(attributes: Attributes, local: string): string | undefined {
  const name = Object.keys(attributes).find((key) => key.endsWith(`:${local}`));
  return name === undefined ? undefined : attributes[name];
}

/** An XML boolean (`1`, `true`, `0`, `false`); undefined where the attribute is absent or something else. */
export function booleanAttribute(value: string | undefined): boolean | undefined {
  if (value === '1' || value === 'true') return true;
  return value === '0' || value === 'false' ? false : undefined;
}

function createParser(
  partName: string,
  limits: ReadLimits,
  handler: XmlHandler,
): SaxesParser<{ xmlns: false; position: false }> {
  const parser = new SaxesParser({ xmlns: false, position: false });
  const parents: string[] = [];
  const branches = new Branches();
  const stop = (what: string): never => {
    throw refusal(partName, what, parser.line, parser.columnIndex + 1);
  };
  parser.on('error', (error) => stop(oneLine(error.message, 80)));
  parser.on('doctype', () => stop('it has a document type definition, which workbooks may not have'));
  parser.on('opentag', (tag) => {
    if (branches.open(tag.name, tag.attributes) === 'read') {
      const name = branches.localName(tag.name);
      handler.open(name, tag.attributes, parents);
      parents.push(name);
    }
    if (branches.depth > limits.depth) stop(`elements are nested more than ${limits.depth} deep`);
  });
  parser.on('closetag', () => {
    if (branches.close() !== 'read') return;
    const name = parents.pop() ?? '';
    handler.close?.(name, parents);
  });
  if (handler.text !== undefined) {
    const onText = (text: string): void => {
      if (branches.reading === 'read') handler.text?.(text);
    };
    parser.on('text', onText);
    parser.on('cdata', onText);
  }
  return parser;
}

function refusal(partName: string, what: string, line?: number, column?: number): FileRefused {
  const position = line === undefined || column === undefined ? '' : ` line ${line}, column ${column}`;
  return new FileRefused(
    `Part “${oneLine(partName)}”${position} cannot be read: ${what}. Open the file in a spreadsheet program and save it again.`,
  );
}

/**
 * A decoder for the part whose first bytes are given (XML 1.0, appendix F.1): by byte order mark, else by the
 * zero bytes of UTF-16, else by the XML declaration, else UTF-8. OOXML allows UTF-8 and UTF-16 only
 * (ECMA-376 part 2, section 6.2.5); any other declared encoding throws FileRefused.
 */
function partDecoder(partName: string, head: Uint8Array): PartDecoder {
  const label = sniff(partName, head);
  const decoder = new TextDecoder(label, { fatal: true });
  const guarded = (chunk: Uint8Array | undefined): string => {
    try {
      return chunk === undefined ? decoder.decode() : decoder.decode(chunk, { stream: true });
    } catch {
      throw new FileRefused(
        `Part “${oneLine(partName)}” of the file is not valid ${label.toUpperCase()} text. Open the file in a spreadsheet program and save it again.`,
      );
    }
  };
  return { decode: guarded, flush: () => guarded(undefined) };
}

function sniff(partName: string, head: Uint8Array): string {
  const [first, second] = head;
  if (first === 0xff && second === 0xfe) return 'utf-16le';
  if (first === 0xfe && second === 0xff) return 'utf-16be';
  if (first === 0x3c && second === 0) return 'utf-16le';
  if (first === 0 && second === 0x3c) return 'utf-16be';
  const declaration = String.fromCharCode(...head.subarray(0, 200));
  const declared = /^(?:\u00ef\u00bb\u00bf)?<\?xml[^>]*?\sencoding\s*=\s*["']([^"']*)["']/.exec(
    declaration,
  )?.[1];
  if (declared === undefined || /^(utf-?8|us-ascii)$/i.test(declared)) return 'utf-8';
  throw new FileRefused(
    `Part “${oneLine(partName)}” of the file is in the encoding “${oneLine(declared, 30)}”; workbooks use UTF-8 or UTF-16. Save it again as .xlsx.`,
  );
}
