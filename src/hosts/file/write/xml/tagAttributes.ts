/** An attribute in the opening tag of an element, and where it stands in the text. */
export interface TagAttribute {
  readonly name: string;
  /** Before the white space in front of it. */
  readonly from: number;
  /** Inside the quotes of its value. */
  readonly valueFrom: number;
  readonly valueTo: number;
  /** Behind the closing quote. */
  readonly to: number;
}

/**
 * The attributes of a well-formed opening tag, in one walk over it: `from` is behind the element's name, `to` behind
 * the tag's `>`. Source: XML 1.0, section 3.1.
 */
export function tagAttributes(text: string, from: number, to: number): TagAttribute[] {
  const found: TagAttribute[] = [];
  let at = from;
  while (at < to) {
    const start = at;
    at = afterSpace(text, at, to);
    const nameFrom = at;
    while (at < to && !endsName(text[at])) at++;
    if (at === nameFrom) {
      at++;
      continue;
    }
    const name = text.slice(nameFrom, at);
    at = afterSpace(text, at, to);
    if (text[at] !== '=') continue;
    at = afterSpace(text, at + 1, to);
    const quote = text[at];
    if (quote !== '"' && quote !== "'") continue;
    const end = text.indexOf(quote, at + 1);
    if (end < 0 || end >= to) return found;
    found.push({ name, from: start, valueFrom: at + 1, valueTo: end, to: end + 1 });
    at = end + 1;
  }
  return found;
}

function isSpace(character: string | undefined): boolean {
  return character === ' ' || character === '\t' || character === '\n' || character === '\r';
}

function endsName(character: string | undefined): boolean {
  return (
    isSpace(character) ||
    character === '=' ||
    character === '/' ||
    character === '>' ||
    character === '"' ||
    character === "'"
  );
}

function afterSpace(text: string, start: number, to: number): number {
  let at = start;
  while (at < to && isSpace(text[at])) at++;
  return at;
}
