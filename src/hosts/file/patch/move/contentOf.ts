import { SaxesParser } from 'saxes';
import type { Element } from '../../write/xml/outline.ts';

/** The text directly inside an element, its entities read. */
export function contentOf(
  text: string,
  { openEnd, closeStart }: Pick<Element, 'openEnd' | 'closeStart'>,
): string {
  const markup = text.slice(openEnd, closeStart);
  if (!/[&<]/.test(markup)) return markup;
  const parser = new SaxesParser({ fragment: true });
  let depth = 0;
  let content = '';
  const add = (run: string): void => {
    if (depth === 0) content += run;
  };
  parser.on('opentag', () => depth++);
  parser.on('closetag', () => depth--);
  parser.on('text', add);
  parser.on('cdata', add);
  parser.write(markup).close();
  return content;
}
