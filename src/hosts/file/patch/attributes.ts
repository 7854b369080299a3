import type { Edit } from '../write/xml/splice.ts';
import { tagAttributes } from '../write/xml/tagAttributes.ts';
import { escapeXml } from '../write/xml/text.ts';
import type { Span } from './sheetMap.ts';

/** Gives the opening tag of an element these unprefixed attributes in place of those it has; `undefined` takes one away. */
export function withAttributes(
  text: string,
  { start: opening, openEnd, name }: Pick<Span, 'start' | 'openEnd' | 'name'>,
  values: Readonly<Record<string, string | undefined>>,
): Edit[] {
  const from = opening + 1 + name.length;
  const missing = new Map(Object.entries(values).filter(([, value]) => value !== undefined));
  const edits: Edit[] = [];
  for (const { name: key, from: start, to } of tagAttributes(text, from, openEnd)) {
    if (!Object.hasOwn(values, key)) continue;
    const value = values[key];
    missing.delete(key);
    edits.push({ from: start, to, text: value === undefined ? '' : ` ${key}="${escapeXml(value)}"` });
  }
  const added = [...missing].map(([key, value]) => ` ${key}="${escapeXml(value ?? '')}"`).join('');
  return added === '' ? edits : [{ from, to: from, text: added }, ...edits];
}
