import { SaxesParser } from 'saxes';

/** One element of the manifest. Names carry no prefix, attributes keep theirs (`xsi:type`). */
export interface Element {
  readonly name: string;
  /** Line in the file, counted from 1. */
  readonly line: number;
  readonly attributes: Readonly<Record<string, string>>;
  readonly parent?: Element;
  readonly children: Element[];
  text: string;
}

/** Something wrong with a manifest: where, and what would put it right. */
export interface Fault {
  readonly line: number;
  readonly message: string;
}

/** The file as a tree of elements, or the first place where it is not well-formed XML. */
export function readElements(xml: string): Element | Fault {
  const parser = new SaxesParser({ xmlns: true, position: true });
  let root: Element | undefined;
  let current: Element | undefined;
  parser.on('opentag', ({ local, attributes }) => {
    const element: Element = {
      name: local,
      line: parser.line,
      attributes: Object.fromEntries(Object.entries(attributes).map(([name, { value }]) => [name, value])),
      ...(current === undefined ? {} : { parent: current }),
      children: [],
      text: '',
    };
    current?.children.push(element);
    root ??= element;
    current = element;
  });
  parser.on('text', (text) => {
    if (current !== undefined) current.text += text;
  });
  parser.on('closetag', () => {
    current = current?.parent;
  });
  try {
    parser.write(xml).close();
  } catch (error) {
    return { line: parser.line, message: error instanceof Error ? error.message : String(error) };
  }
  return root ?? { line: 1, message: 'the file holds no element' };
}

/** The element and everything in it, in the order of the file. */
export function everyElement(element: Element): Element[] {
  return [element, ...element.children.flatMap(everyElement)];
}

function childrenNamed(element: Element | undefined, name: string): Element[] {
  return element?.children.filter((child) => child.name === name) ?? [];
}

/** The elements that a path of names leads to. */
export function at(element: Element, ...path: readonly string[]): Element[] {
  return path.reduce<Element[]>(
    (found, name) => found.flatMap((each) => childrenNamed(each, name)),
    [element],
  );
}

export function value(element: Element): string {
  return element.attributes['DefaultValue'] ?? element.text.trim();
}
