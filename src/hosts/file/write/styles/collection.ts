import { attribute, child, childrenNamed, type Element } from '../xml/outline.ts';
import { appendInside, replaceAttribute, type Edit } from '../xml/splice.ts';

/** Children of the style sheet in the order of the schema (CT_Stylesheet). */
const schemaOrder = [
  'numFmts',
  'fonts',
  'fills',
  'borders',
  'cellStyleXfs',
  'cellXfs',
  'cellStyles',
  'dxfs',
  'tableStyles',
  'colors',
  'extLst',
] as const;

/** One of the style sheet's numbered lists (fonts, fills, cell formats …), to which entries are added at the end. */
export interface StyleList {
  /** The index of an entry of this markup, which is added unless an equal one was added before. */
  index(markup: string): number;
  /** How many entries the list holds, old and new. */
  size(): number;
  edits(): readonly Edit[];
}

/**
 * The list of that name. Where the style sheet lacks it, it is made in its place, beginning with `reserved`:
 * the entries every program takes for granted.
 */
export function styleList(
  text: string,
  root: Element,
  name: (typeof schemaOrder)[number],
  reserved: readonly string[] = [],
): StyleList {
  const list = child(root, name);
  const existing = list ? list.children.length : 0;
  const added: string[] = list ? [] : [...reserved];
  const known = new Map<string, number>();
  return {
    index(markup) {
      const at = known.get(markup) ?? existing + added.push(markup) - 1;
      known.set(markup, at);
      return at;
    },
    size: () => existing + added.length,
    edits() {
      if (added.length === 0) return [];
      const markup = added.join('');
      if (!list) return [placed(text, root, name, markup, added.length)];
      const count = replaceAttribute(text, list, 'count', String(existing + added.length));
      return [...(count ? [count] : []), appendInside(text, list, markup)];
    },
  };
}

function placed(
  text: string,
  root: Element,
  name: (typeof schemaOrder)[number],
  inner: string,
  count: number,
): Edit {
  const tag = root.prefix + name;
  const markup = `<${tag} count="${count}">${inner}</${tag}>`;
  const earlier: readonly string[] = schemaOrder.slice(0, schemaOrder.indexOf(name));
  const before = root.children.findLast((element) => earlier.includes(element.local));
  const first = root.children[0];
  const at = before?.end ?? first?.start;
  return at === undefined ? appendInside(text, root, markup) : { from: at, to: at, text: markup };
}

/** Number format codes the workbook defines: code → id. */
export function customFormats(root: Element): ReadonlyMap<string, number> {
  const list = child(root, 'numFmts');
  const entries = list ? childrenNamed(list, 'numFmt') : [];
  return new Map(
    entries.map((entry) => [attribute(entry, 'formatCode') ?? '', Number(attribute(entry, 'numFmtId')) || 0]),
  );
}
