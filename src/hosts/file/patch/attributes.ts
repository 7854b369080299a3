import type { Edit } from '../write/xml/splice.ts';
import { escapeXml } from '../write/xml/text.ts';
import type { Span } from './sheetMap.ts';

/** Gives the opening tag of an element these unprefixed attributes in place of those it has; `undefined` takes one away. */
export function withAttributes(
  text: string,
  { start, openEnd, name }: Pick<Span, 'start' | 'openEnd' | 'name'>,
  values: Readonly<Record<string, string | undefined>>,
): Edit[] {
  const from = start + 1 + name.length;
  const missing = new Map(Object.entries(values).filter(([, value]) => value !== undefined));
  const edits: Edit[] = [];
  for (const pair of text.slice(from, openEnd).matchAll(/\s+([^\s=/>"']+)\s*=\s*("[^"]*"|'[^']*')/g)) {
    const [whole, key = ''] = pair;
    if (!Object.hasOwn(values, key)) continue;
    const value = values[key];
    missing.delete(key);
    const at = from + pair.index;
    edits.push({
      from: at,
      to: at + whole.length,
      text: value === undefined ? '' : ` ${key}="${escapeXml(value)}"`,
    });
  }
  const added = [...missing].map(([key, value]) => ` ${key}="${escapeXml(value ?? '')}"`).join('');
  return added === '' ? edits : [{ from, to: from, text: added }, ...edits];
}
