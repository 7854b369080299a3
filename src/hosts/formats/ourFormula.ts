/** Namespace of the worksheet functions. */
const namespace = 'TRIPDRIFT';

/** What stands before a function's own name as people type it. */
const shownPrefix = `${namespace}.`;

/** What files write in its place; Excel shows it where the function is not registered. */
const storedPrefixOfOurs = `_xldudf_${namespace}_`;

const stored = new RegExp(`^${storedPrefixOfOurs}(\\w+)$`, 'i');

const shown = new RegExp(`^${shownPrefix.replace('.', '\\.')}(\\w+)$`, 'i');

const storedName = new RegExp(`${storedPrefixOfOurs}(?=\\w)`, 'gi');
const shownName = new RegExp(`(?<![\\w.])${shownPrefix.replace('.', '\\.')}\\w`, 'i');

/** Texts and quoted sheet names, in which a name means nothing. */
const quoted = /"(?:[^"]|"")*"|'(?:[^']|'')*'/g;

/** Whether a formula calls a worksheet function of ours, by either form of its name. */
export function callsOurs(formula: string): boolean {
  const bare = formula.replace(quoted, '""');
  return shownName.test(bare) || bare.search(storedName) >= 0;
}

/** Whether what stands in a cell is a formula that calls a worksheet function of ours. */
export function isOurs(formula: unknown): formula is string {
  return typeof formula === 'string' && formula.startsWith('=') && callsOurs(formula);
}

/** Whether a formula of ours has the name in its stored form. */
export function hasStoredName(formula: string): boolean {
  return formula.replace(quoted, '""').search(storedName) >= 0;
}

/** The formula with our functions' names as they are typed; texts and sheet names stay as they are. */
export function withShownNames(formula: string): string {
  const parts = formula.split(new RegExp(`(${quoted.source})`, 'g'));
  return parts
    .map((part, index) => (index % 2 === 0 ? part.replace(storedName, shownPrefix) : part))
    .join('');
}

/** The name of a function of ours as people type it, from its stored form in any case; `undefined` for any other word. */
export function typedFunctionName(word: string): string | undefined {
  const own = stored.exec(word)?.[1];
  return own && shownPrefix + own.toUpperCase();
}

/** The name of a function of ours as files store it, from the form people type in any case; `undefined` for any other word. */
export function storedFunctionName(word: string): string | undefined {
  const own = shown.exec(word)?.[1];
  return own && storedPrefixOfOurs + own.toUpperCase();
}
