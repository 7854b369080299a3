import { SaxesParser } from 'saxes';
import { strFromU8, unzipSync } from 'fflate';

/** Parts of a workbook unpacked by fflate, as text where they are XML. */
export function partText(bytes: Uint8Array, name: string): string {
  const part = unzipSync(bytes)[name];
  if (!part) throw new Error(`no part ${name}`);
  return strFromU8(part);
}

/** A part as parsed by saxes: the opening tags as `local{attributes}`, closing tags as `/local`, and the texts. */
export function events(text: string): string[] {
  const found: string[] = [];
  const parser = new SaxesParser({ xmlns: true });
  parser.on('opentag', (tag) => {
    const attributes = Object.values(tag.attributes)
      .filter((attribute) => attribute.local !== 'count')
      .map((attribute) => `${attribute.name}=${attribute.value}`);
    found.push(`${tag.local}{${attributes.join(',')}}`);
  });
  parser.on('closetag', (tag) => found.push(`/${tag.local}`));
  parser.on('text', (content) => found.push(content));
  parser.write(text).close();
  return found;
}

/** Whether all of `part` stands in `whole` in the same order. */
export function isSubsequence(part: readonly string[], whole: readonly string[]): boolean {
  let at = 0;
  for (const entry of whole) if (entry === part[at]) at++;
  return at === part.length;
}
