import { appendInside, splice } from '../../../hosts/file/write/xml/splice.ts';
import { outline } from '../../../hosts/file/write/xml/outline.ts';
import { openZip } from '../../../hosts/file/zip/archive.ts';
import { defaultLimits } from '../../../hosts/file/zip/limits.ts';
import { collect } from '../../../hosts/file/zip/collect.ts';
import { zipWriter } from '../../../hosts/file/zip/writer.ts';

/** The parts of a workbook as texts, by name without a leading slash, in the order of the file. */
export type Parts = Map<string, string>;

/** Takes a workbook apart. */
export function unpackParts(bytes: Uint8Array): Parts {
  const archive = openZip(bytes, defaultLimits);
  const decoder = new TextDecoder();
  return new Map(archive.entries.map((entry) => [entry.name, decoder.decode(archive.bytes(entry))]));
}

/** Puts a workbook together; equal parts give equal bytes. */
export function packParts(parts: Parts): Uint8Array {
  const { sink, bytes } = collect();
  const zip = zipWriter(sink);
  for (const [name, text] of parts) zip.add(name, new TextEncoder().encode(text));
  zip.finish();
  return bytes();
}

/** The text of a part. Throws an Error where the workbook lacks it. */
export function partNamed(parts: Parts, name: string): string {
  const text = parts.get(name);
  if (text === undefined) throw new Error(`the workbook has no part ${name}`);
  return text;
}

/** Puts markup behind what stands in a part's root element. */
export function appendToRoot(parts: Parts, name: string, markup: string): void {
  const text = partNamed(parts, name);
  parts.set(name, splice(text, [appendInside(text, outline(text, name), markup)]));
}
