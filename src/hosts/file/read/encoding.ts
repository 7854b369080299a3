import { FileRefused, oneLine } from '../zip/refused.ts';

/** Turns the bytes of one XML part into text, chunk by chunk; `flush` ends it. Both throw FileRefused for broken text. */
export interface PartDecoder {
  decode(chunk: Uint8Array): string;
  flush(): string;
}

/**
 * A decoder for the part whose first bytes are given (XML 1.0, appendix F.1): by byte order mark, else by the
 * zero bytes of UTF-16, else by the XML declaration, else UTF-8. OOXML allows UTF-8 and UTF-16 only
 * (ECMA-376 part 2, section 6.2.5); any other declared encoding throws FileRefused.
 */
export function partDecoder(partName: string, head: Uint8Array): PartDecoder {
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
