/** Attributes of an element of a part, by name. */
export type Attributes = Readonly<Record<string, string>>;

/** Namespace of markup compatibility (ECMA-376 part 3, section 6). */
export const compatibility = 'http://schemas.openxmlformats.org/markup-compatibility/2006';

/**
 * Namespaces whose branch is read: the format's own in both dialects (ECMA-376 part 1, annex A), and the extensions that
 * spreadsheet programs publish for it ([MS-XLSX] 2.3, [MS-ODRAWXML] 2.1), so that what is read is what those programs show.
 */
const understood: ReadonlySet<string> = new Set(
  [
    ['http://schemas.openxmlformats.org/', 'spreadsheetml/2006/main officeDocument/2006/relationships'],
    ['http://schemas.openxmlformats.org/drawingml/2006/', 'main chart spreadsheetDrawing chartDrawing'],
    ['http://purl.oclc.org/ooxml/', 'spreadsheetml/main officeDocument/relationships'],
    ['http://purl.oclc.org/ooxml/drawingml/', 'main chart spreadsheetDrawing chartDrawing'],
    [
      'http://schemas.microsoft.com/office/spreadsheetml/',
      '2009/9/main 2009/9/ac 2010/11/main 2010/11/ac 2014/11/main 2014/revision 2015/02/main 2015/revision2 2016/revision3 2016/revision5 2016/revision6 2016/revision9 2016/revision10',
    ],
    ['http://schemas.microsoft.com/office/drawing/', '2010/main 2012/chart 2007/8/2/chart'],
  ].flatMap(([stem = '', names = '']) => names.split(' ').map((name) => stem + name)),
);

/**
 * How an element is read: as it stands; as one that only says which of its parts are read (`AlternateContent`, and the
 * branch of it that counts); or not at all, in a branch that does not count.
 */
export type Reading = 'read' | 'wrapper' | 'unread';

interface Declared {
  readonly depth: number;
  readonly prefix: string;
  readonly before: string | undefined;
}

/**
 * Tells, below any parser of a part, which of its alternatives are read (ECMA-376 part 3, section 9.4): of an
 * `AlternateContent` the first `Choice` whose namespaces are all understood, else its `Fallback`. Knows the namespaces in
 * force, so that the parser need not.
 */
export class Branches {
  readonly #namespaces = new Map<string, string>();
  readonly #declared: Declared[] = [];
  readonly #readings: Reading[] = [];
  readonly #alternatives: { readonly depth: number; isChosen: boolean }[] = [];
  #root: string | undefined;
  #unread = 0;

  /** Elements around the next one, those that are not read among them. */
  get depth(): number {
    return this.#readings.length;
  }

  /** How the innermost open element is read. */
  get reading(): Reading {
    return this.#readings.at(-1) ?? 'read';
  }

  /** Whether the innermost open element stands in an alternative, or is one. */
  get isAlternative(): boolean {
    return this.#alternatives.length > 0 || this.#unread > 0;
  }

  /** The namespaces in force in the innermost open element, by prefix. */
  namespaces(): readonly (readonly [prefix: string, uri: string])[] {
    return [...this.#namespaces];
  }

  /** Hears of an opening tag, by its name with its prefix. */
  open(name: string, attributes: Attributes): Reading {
    const depth = this.#readings.length + 1;
    for (const key in attributes) {
      if (key.charCodeAt(0) === 0x78 && key.startsWith('xmlns')) {
        this.#declare(depth, key, attributes[key] ?? '');
      }
    }
    if (depth === 1) this.#root = this.#namespaceOf(name);
    const reading = this.#unread > 0 ? 'unread' : this.#readingOf(name, attributes, depth);
    if (reading === 'unread' && this.#unread === 0) this.#unread = depth;
    this.#readings.push(reading);
    return reading;
  }

  /** Hears of the closing tag of the innermost open element; how that was read. */
  close(): Reading {
    const depth = this.#readings.length;
    const reading = this.#readings.pop() ?? 'read';
    if (this.#unread === depth) this.#unread = 0;
    if (this.#alternatives.at(-1)?.depth === depth) this.#alternatives.pop();
    for (let last = this.#declared.at(-1); last?.depth === depth; last = this.#declared.at(-1)) {
      this.#declared.pop();
      if (last.before === undefined) this.#namespaces.delete(last.prefix);
      else this.#namespaces.set(last.prefix, last.before);
    }
    return reading;
  }

  /**
   * The name of an element that was just opened, without its prefix where it is of the root's namespace; elements of others
   * keep a colon, so that none is taken for one of the format's own.
   */
  localName(name: string): string {
    const colon = name.indexOf(':');
    const local = colon < 0 ? name : name.slice(colon + 1);
    if (this.#namespaceOf(name) === this.#root) return local;
    return colon < 0 ? `:${name}` : name;
  }

  #readingOf(name: string, attributes: Attributes, depth: number): Reading {
    const around = this.#alternatives.at(-1);
    if (around?.depth === depth - 1) {
      const isBranch = this.#isCompatibility(name, 'Fallback') || this.#isUnderstood(name, attributes);
      if (!isBranch || around.isChosen) return 'unread';
      around.isChosen = true;
      return 'wrapper';
    }
    if (!this.#isCompatibility(name, 'AlternateContent')) return 'read';
    this.#alternatives.push({ depth, isChosen: false });
    return 'wrapper';
  }

  #isUnderstood(name: string, attributes: Attributes): boolean {
    if (!this.#isCompatibility(name, 'Choice')) return false;
    const required = (attributes['Requires'] ?? '').split(/\s+/).filter((prefix) => prefix !== '');
    return (
      required.length > 0 && required.every((prefix) => understood.has(this.#namespaces.get(prefix) ?? ''))
    );
  }

  #isCompatibility(name: string, local: string): boolean {
    return name.endsWith(local) && name.length > local.length
      ? name.charCodeAt(name.length - local.length - 1) === 0x3a && this.#namespaceOf(name) === compatibility
      : name === local && this.#namespaceOf(name) === compatibility;
  }

  #namespaceOf(name: string): string | undefined {
    const colon = name.indexOf(':');
    return this.#namespaces.get(colon < 0 ? '' : name.slice(0, colon));
  }

  #declare(depth: number, key: string, uri: string): void {
    if (key.length > 5 && key[5] !== ':') return;
    const prefix = key.slice(6);
    this.#declared.push({ depth, prefix, before: this.#namespaces.get(prefix) });
    this.#namespaces.set(prefix, uri);
  }
}
