import { type StyleListName, styleListNames } from '../../read/styles.ts';
import { appendInside, replaceAttribute, type Edit } from '../xml/splice.ts';
import type { StyleSheet } from './styleSheet.ts';

/** One of the style sheet's numbered lists (fonts, fills, cell formats …), to which entries are added at the end. */
export interface StyleList {
  /** The index of an entry of this markup, which is added unless an equal one was added before. */
  index(markup: string): number;
  /** The index of an entry that is added whatever stands there. */
  add(markup: string): number;
  /** How many entries the list holds, old and new. */
  size(): number;
  edits(): readonly Edit[];
}

/**
 * The list of that name. Where the style sheet lacks it, it is made in its place; where it holds nothing, it begins with
 * `reserved`: the entries every program takes for granted.
 */
export function styleList(
  sheet: StyleSheet,
  name: StyleListName,
  reserved: readonly string[] = [],
): StyleList {
  const { text } = sheet;
  const list = sheet.list(name);
  const existing = sheet.count(name);
  const added: string[] = existing > 0 ? [] : [...reserved];
  const known = new Map<string, number>();
  return {
    index(markup) {
      const at = known.get(markup) ?? existing + added.push(markup) - 1;
      known.set(markup, at);
      return at;
    },
    add: (markup) => existing + added.push(markup) - 1,
    size: () => existing + added.length,
    edits() {
      if (added.length === 0) return [];
      const markup = added.join('');
      if (!list) return [placed(sheet, name, markup, added.length)];
      const count = replaceAttribute(text, list, 'count', String(existing + added.length));
      return [...(count ? [count] : []), appendInside(text, list, markup)];
    },
  };
}

function placed({ list, prefix, root }: StyleSheet, name: StyleListName, inner: string, count: number): Edit {
  const tag = prefix + name;
  const markup = `<${tag} count="${count}">${inner}</${tag}>`;
  const earlier = styleListNames.slice(0, styleListNames.indexOf(name));
  const at = Math.max(root.openEnd, ...earlier.map((one) => list(one)?.outerEnd ?? 0));
  return { from: at, to: at, text: markup };
}
