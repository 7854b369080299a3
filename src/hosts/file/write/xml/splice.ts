import type { Element } from './outline.ts';
import { tagAttributes } from './tagAttributes.ts';

type Opening = Pick<Element, 'name' | 'start' | 'openEnd'>;
type Place = Pick<Element, 'name' | 'openEnd' | 'closeStart' | 'selfClosing'>;

/** Replaces `text.slice(from, to)`; `from === to` inserts. */
export interface Edit {
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

/** Carries out edits that do not overlap; those at one place keep their order. Everything else stays as it was. */
export function splice(text: string, edits: readonly Edit[]): string {
  const ordered = edits.toSorted((a, b) => a.from - b.from);
  let result = '';
  let at = 0;
  for (const edit of ordered) {
    result += text.slice(at, edit.from) + edit.text;
    at = edit.to;
  }
  return result + text.slice(at);
}

/** Puts markup behind the last child of an element, opening it where it closed itself. */
export function appendInside(text: string, element: Place, markup: string): Edit {
  if (!element.selfClosing) return { from: element.closeStart, to: element.closeStart, text: markup };
  const slash = text.lastIndexOf('/', element.openEnd - 1);
  return { from: slash, to: element.openEnd, text: `>${markup}</${element.name}>` };
}

/** Gives an unprefixed attribute that stands in the opening tag another value; `undefined` where it does not stand there. */
export function replaceAttribute(
  text: string,
  element: Opening,
  name: string,
  value: string,
): Edit | undefined {
  const from = element.start + 1 + element.name.length;
  const found = tagAttributes(text, from, element.openEnd).find((attribute) => attribute.name === name);
  return found && { from: found.valueFrom, to: found.valueTo, text: value };
}
