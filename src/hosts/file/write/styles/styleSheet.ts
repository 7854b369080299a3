import { Branches } from '../../read/branches.ts';
import { placingParser } from '../../read/placingParser.ts';
import { isEntry, type StyleListName, styleListNames } from '../../read/styles.ts';
import { type Element, outline } from '../xml/outline.ts';
import { escapeXml } from '../xml/text.ts';

/** Where one of the numbered lists stands in the style sheet's text, in UTF-16 units. */
interface ListPlace {
  /** Its element's name with its prefix. */
  readonly name: string;
  readonly start: number;
  readonly openEnd: number;
  readonly closeStart: number;
  readonly selfClosing: boolean;
  readonly end: number;
  /** End of what stands in the style sheet itself: of the list, or of the alternatives around it. */
  readonly outerEnd: number;
}

/** An entry by itself, with the namespaces in force around it. */
interface StyleEntry {
  readonly text: string;
  readonly element: Element;
}

/** A style sheet as far as adding to it takes. Its entries are counted as readers count them. */
export interface StyleSheet {
  readonly text: string;
  /** Prefix of its elements with its colon, or empty. */
  readonly prefix: string;
  readonly root: { readonly name: string; readonly openEnd: number; readonly selfClosing: boolean };
  readonly list: (name: StyleListName) => ListPlace | undefined;
  /** Codes of the number formats it defines, by their ids. */
  readonly formats: ReadonlyMap<number, string>;
  readonly count: (name: StyleListName) => number;
  readonly entry: (name: StyleListName, index: number) => StyleEntry | undefined;
}

type Growing<T> = { -readonly [Key in keyof T]: T[Key] };

/** Where entries of a list begin and end, two numbers each: a large style sheet has hundreds of thousands. */
interface Entries {
  readonly ends: number[];
  /** Declarations of namespaces, where an entry stands in alternatives that may declare their own. */
  readonly namespaces: Map<number, string>;
}

/**
 * Finds the lists of a style sheet (ECMA-376 part 1, section 18.8) in one pass that keeps nothing else, as style sheets of
 * tens of megabytes occur. Throws FileRefused, naming the part, for a document type and for text that is not well-formed.
 */
export function styleSheet(text: string, part: string): StyleSheet {
  const { parser, tag, damaged } = placingParser(text, part);
  const branches = new Branches();
  const lists = new Map<StyleListName, Growing<ListPlace>>();
  const entries = new Map<StyleListName, Entries>();
  const parents: string[] = [];
  const open: number[] = [];
  const outer: Growing<ListPlace>[] = [];
  let root: StyleSheet['root'] | undefined;
  let namespaces = '';
  let list: Growing<ListPlace> | undefined;
  let inList: Entries | undefined;
  let listName: StyleListName | undefined;
  const formats = new Map<number, string>();

  const startList = (local: string, name: string, selfClosing: boolean): void => {
    const known = styleListNames.find((one) => one === local);
    if (known === undefined) return;
    const at = parser.position;
    list = { name, start: tag.start, openEnd: at, closeStart: at, selfClosing, end: at, outerEnd: at };
    outer.push(list);
    lists.set(known, list);
    inList = entries.get(known) ?? { ends: [], namespaces: new Map() };
    entries.set(known, inList);
    listName = known;
    if (!branches.isAlternative) namespaces = declarations(branches);
  };
  parser.on('opentag', ({ name, attributes, isSelfClosing }) => {
    open.push(tag.start);
    if (branches.open(name, attributes) !== 'read') return;
    const local = branches.localName(name);
    if (parents.length === 0) {
      root = { name, openEnd: parser.position, selfClosing: isSelfClosing };
    } else if (parents.length === 1) startList(local, name, isSelfClosing);
    else if (isEntry('numFmts', local, parents)) {
      formats.set(Number(attributes['numFmtId'] ?? 0), attributes['formatCode'] ?? '');
    }
    parents.push(local);
  });
  parser.on('closetag', () => {
    const from = open.pop() ?? 0;
    const to = parser.position;
    if (branches.close() === 'read') {
      const local = parents.pop() ?? '';
      if (parents.length === 1 && list !== undefined) {
        list.end = to;
        if (!list.selfClosing) list.closeStart = text.lastIndexOf('</', to - 1);
        list = inList = listName = undefined;
      } else if (inList !== undefined && listName !== undefined && isEntry(listName, local, parents)) {
        if (branches.isAlternative) inList.namespaces.set(inList.ends.length / 2, declarations(branches));
        inList.ends.push(from, to);
      }
    }
    if (open.length === 1) for (const ended of outer.splice(0)) ended.outerEnd = to;
  });
  parser.write(text).close();
  if (root === undefined) throw damaged('it is empty');
  const { name } = root;
  return {
    text,
    prefix: name.slice(0, name.indexOf(':') + 1),
    root,
    formats,
    list: (wanted) => lists.get(wanted),
    count: (wanted) => (entries.get(wanted)?.ends.length ?? 0) / 2,
    entry(wanted, index) {
      const { ends = [], namespaces: own } = entries.get(wanted) ?? {};
      const [from, to] = [ends[index * 2], ends[index * 2 + 1]];
      if (from === undefined || to === undefined) return undefined;
      const whole = `<entry${own?.get(index) ?? namespaces}>${text.slice(from, to)}</entry>`;
      const element = outline(whole, part).children[0];
      return element && { text: whole, element };
    },
  };
}

function declarations(branches: Branches): string {
  return branches
    .namespaces()
    .map(([prefix, uri]) => ` xmlns${prefix === '' ? '' : `:${prefix}`}="${escapeXml(uri)}"`)
    .join('');
}
