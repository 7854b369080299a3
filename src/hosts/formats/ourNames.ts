/** Namespace of the worksheet functions. */
const namespace = 'TRIPDRIFT';

/** What stands before a function's own name as people type it. */
export const shownPrefix = `${namespace}.`;

/** What files write in its place; Excel shows it where the function is not registered. */
export const storedPrefixOfOurs = `_xldudf_${namespace}_`;

const stored = new RegExp(`^${storedPrefixOfOurs}(\\w+)$`, 'i');
const shown = new RegExp(`^${shownPrefix.replace('.', '\\.')}(\\w+)$`, 'i');

/** The name of a function of ours as people type it, from its stored form in any case; `undefined` for any other word. */
export function shownOurs(word: string): string | undefined {
  const own = stored.exec(word)?.[1];
  return own && shownPrefix + own.toUpperCase();
}

/** The name of a function of ours as files store it, from the form people type in any case; `undefined` for any other word. */
export function storedOurs(word: string): string | undefined {
  const own = shown.exec(word)?.[1];
  return own && storedPrefixOfOurs + own.toUpperCase();
}
