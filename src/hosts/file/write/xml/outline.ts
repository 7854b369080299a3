import { SaxesParser, type SaxesAttributeNS } from 'saxes';
import { Branches, compatibility, type Reading } from '../../read/branches.ts';
import { FileRefused, oneLine } from '../../zip/refused.ts';

/** An element of an XML text with where it stands in it, in UTF-16 units from the text's start. */
export interface Element {
  readonly name: string;
  readonly local: string;
  /** Prefix with its colon (`x:`), or empty. */
  readonly prefix: string;
  readonly uri: string;
  readonly attributes: readonly SaxesAttributeNS[];
  /** All that stand in it, every branch of alternatives among them; `child` and `childrenNamed` go by the one that counts. */
  readonly children: readonly Element[];
  /** Whether readers hear it, and if not why. */
  readonly reading: Reading;
  /** Namespace declarations in force inside the element: prefix → uri. */
  readonly namespaces: ReadonlyMap<string, string>;
  /** Before `<` of the opening tag. */
  readonly start: number;
  /** After `>` of the opening tag. */
  readonly openEnd: number;
  /** Before `</` of the closing tag; equals `openEnd` when the element closes itself. */
  readonly closeStart: number;
  readonly selfClosing: boolean;
  /** After the element. */
  readonly end: number;
}

type Growing = { -readonly [Key in keyof Element]: Element[Key] } & { children: Growing[] };

/**
 * The elements of an XML text and their places, for splicing into the text without rewriting it.
 * Throws FileRefused, naming the part, for a DTD and for text that is not well-formed.
 */
export function outline(text: string, part: string): Element {
  const parser = new SaxesParser({ xmlns: true, position: true });
  const open: Growing[] = [];
  const branches = new Branches();
  let root: Growing | undefined;
  let start = 0;
  parser.on('error', (error) => {
    throw new FileRefused(`The workbook's part ${oneLine(part)} is damaged: ${error.message}.`);
  });
  parser.on('doctype', () => {
    throw new FileRefused(
      `The workbook's part ${oneLine(part)} contains a document type, which workbooks never do.`,
    );
  });
  parser.on('opentagstart', () => {
    start = text.lastIndexOf('<', parser.position - 1);
  });
  parser.on('opentag', (tag) => {
    const parent = open.at(-1);
    const attributes = Object.values(tag.attributes);
    const at = parser.position;
    const element: Growing = {
      name: tag.name,
      local: tag.local,
      prefix: tag.prefix === '' ? '' : `${tag.prefix}:`,
      uri: tag.uri,
      attributes,
      children: [],
      reading: branches.open(tag.name, plain(attributes)),
      namespaces: declared(parent?.namespaces, attributes),
      start,
      openEnd: at,
      closeStart: at,
      selfClosing: tag.isSelfClosing,
      end: at,
    };
    parent?.children.push(element);
    root ??= element;
    open.push(element);
  });
  parser.on('closetag', () => {
    const element = open.pop();
    branches.close();
    if (!element || element.selfClosing) return;
    element.end = parser.position;
    element.closeStart = text.lastIndexOf('</', parser.position - 1);
  });
  parser.write(text).close();
  if (!root) throw new FileRefused(`The workbook's part ${oneLine(part)} is empty.`);
  return root;
}

const noNamespaces: ReadonlyMap<string, string> = new Map();

function declared(
  outer: ReadonlyMap<string, string> = noNamespaces,
  attributes: readonly SaxesAttributeNS[],
): ReadonlyMap<string, string> {
  const own = attributes.filter((attribute) => attribute.prefix === 'xmlns');
  if (own.length === 0) return outer;
  return new Map([...outer, ...own.map((attribute): [string, string] => [attribute.local, attribute.value])]);
}

function plain(attributes: readonly SaxesAttributeNS[]): Record<string, string> {
  return Object.fromEntries(attributes.map(({ name, value }) => [name, value]));
}

/** The first child of that local name, in the parent's own namespace, as readers hear it. */
export function child(parent: Element, local: string): Element | undefined {
  return childrenNamed(parent, local)[0];
}

/** All children of that local name, in the parent's own namespace, as readers hear them: of alternatives those that count. */
export function childrenNamed(parent: Element, local: string): readonly Element[] {
  return heard(parent).filter((element) => element.local === local && element.uri === parent.uri);
}

function heard({ children }: Element): readonly Element[] {
  if (children.every(({ reading }) => reading === 'read')) return children;
  return children.flatMap((element) => {
    if (element.reading === 'unread') return [];
    return element.reading === 'read' ? [element] : heard(element);
  });
}

/** All that stand in it with every branch of alternatives in their place, for changes that all of them need. */
export function everyBranch({ children }: Element): readonly Element[] {
  if (children.every(({ uri }) => uri !== compatibility)) return children;
  return children.flatMap((element) => (element.uri === compatibility ? everyBranch(element) : [element]));
}

/** An attribute's value by local name; `uri` is that of a prefixed attribute. */
export function attribute(element: Element, local: string, uri = ''): string | undefined {
  return element.attributes.find((entry) => entry.local === local && entry.uri === uri)?.value;
}
