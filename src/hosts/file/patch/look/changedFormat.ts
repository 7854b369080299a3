import { child, type Element } from '../../write/xml/outline.ts';
import { escapeXml } from '../../write/xml/text.ts';
import type { LookChange } from '../types.ts';

/** Numbers of the font, fill and number format that a cell style takes in place of its own. */
export type FormatIds = Readonly<Partial<Record<'numFmtId' | 'fontId' | 'fillId', number>>>;

const applied = { numFmtId: 'applyNumberFormat', fontId: 'applyFont', fillId: 'applyFill' } as const;

/** Markup of a cell style (`xf`) like an existing one but for these numbers and its alignment; borders, protection and all else stay. */
export function changedFormat(text: string, format: Element, ids: FormatIds, change: LookChange): string {
  const attributes = new Map(format.attributes.map(({ name, value }) => [name, value]));
  for (const name of Object.keys(applied) as (keyof typeof applied)[]) {
    if (ids[name] === undefined) continue;
    attributes.set(name, String(ids[name]));
    attributes.set(applied[name], '1');
  }
  const alignment = changedAlignment(format, change);
  if (alignment !== undefined) attributes.set('applyAlignment', '1');
  const old = child(format, 'alignment');
  const others = format.children
    .filter((part) => alignment === undefined || part !== old)
    .map(({ start, end }) => text.slice(start, end));
  const inside = (alignment ?? '') + others.join('');
  const start = `<${format.name}${markupOf(attributes)}`;
  return inside === '' ? `${start}/>` : `${start}>${inside}</${format.name}>`;
}

/** The alignment with what changes, empty for a plain one; `undefined` where nothing of it changes. */
function changedAlignment(format: Element, { align, valign, wrap }: LookChange): string | undefined {
  if (align === undefined && valign === undefined && wrap === undefined) return undefined;
  const old = child(format, 'alignment');
  const attributes = new Map(old?.attributes.map(({ name, value }) => [name, value]));
  const set = (name: string, value: string | null | undefined): void => {
    if (value === null) attributes.delete(name);
    else if (value !== undefined) attributes.set(name, value);
  };
  set('horizontal', align);
  set('vertical', valign === 'bottom' ? null : valign);
  set('wrapText', wrap === undefined ? undefined : wrap ? '1' : null);
  // An indent has no meaning without a side (ECMA-376 part 1, section 18.8.1).
  if (align === null) attributes.delete('indent');
  return attributes.size === 0 ? '' : `<${format.prefix}alignment${markupOf(attributes)}/>`;
}

function markupOf(attributes: ReadonlyMap<string, string>): string {
  return [...attributes].map(([name, value]) => ` ${name}="${escapeXml(value)}"`).join('');
}
