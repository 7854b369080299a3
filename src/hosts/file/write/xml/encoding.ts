import { FileRefused, oneLine } from '../../zip/refused.ts';

/** An XML part as text. The byte order mark, where one stands, is the text's first character. */
export interface XmlPart {
  readonly text: string;
  readonly encoding: 'utf-8' | 'utf-16le' | 'utf-16be';
}

/** Decodes a part by its byte order mark, else as UTF-8. Throws FileRefused where the bytes are not of that encoding. */
export function decodeXml(bytes: Uint8Array, part: string): XmlPart {
  const encoding = encodingOf(bytes);
  try {
    return { text: new TextDecoder(encoding, { fatal: true, ignoreBOM: true }).decode(bytes), encoding };
  } catch {
    throw new FileRefused(
      `The workbook's part ${oneLine(part)} is damaged: its bytes are not ${encoding} text.`,
    );
  }
}

/** The bytes of a part in the encoding it came in. */
export function encodeXml({ text, encoding }: XmlPart): Uint8Array {
  if (encoding === 'utf-8') return new TextEncoder().encode(text);
  const bytes = new Uint8Array(text.length * 2);
  const view = new DataView(bytes.buffer);
  for (let at = 0; at < text.length; at++)
    view.setUint16(at * 2, text.charCodeAt(at), encoding === 'utf-16le');
  return bytes;
}

function encodingOf(bytes: Uint8Array): XmlPart['encoding'] {
  const [first, second] = bytes;
  if (first === 0xff && second === 0xfe) return 'utf-16le';
  if (first === 0xfe && second === 0xff) return 'utf-16be';
  if (first === 0x3c && second === 0) return 'utf-16le';
  if (first === 0 && second === 0x3c) return 'utf-16be';
  return 'utf-8';
}
