import { type FontProperties, fontMarkup, opaque } from '../../write/styles/font.ts';
import { escapeXml } from '../../write/xml/text.ts';
import type { LookChange } from '../types.ts';

/** Whether a change of look needs another font. */
export function changesFont({ font, size, bold, italic, underline, strike, color }: LookChange): boolean {
  return [font, size, bold, italic, underline, strike, color].some((value) => value !== undefined);
}

/** Markup of a font like `base` but for what changes; `p` is the prefix of the style sheet's elements. */
export function changedFont(p: string, base: FontProperties, change: LookChange): string {
  const properties = new Map(base);
  const set = (name: string, markup: string | undefined): void => {
    if (markup === undefined) properties.delete(name);
    else properties.set(name, `<${p}${name}${markup}/>`);
  };
  const switched = { b: change.bold, i: change.italic, u: change.underline, strike: change.strike };
  for (const [name, on] of Object.entries(switched)) {
    if (on !== undefined) set(name, on ? '' : undefined);
  }
  if (change.size !== undefined) set('sz', ` val="${change.size}"`);
  if (change.color !== undefined) {
    set('color', change.color === null ? undefined : ` rgb="${opaque(change.color)}"`);
  }
  if (change.font !== undefined) {
    set('name', ` val="${escapeXml(change.font)}"`);
    // What names the theme's font, and the kind of the one before, holds no longer.
    for (const name of ['scheme', 'family', 'charset']) set(name, undefined);
  }
  return fontMarkup(p, properties, {});
}
