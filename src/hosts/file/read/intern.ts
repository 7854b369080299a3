/**
 * A function that returns one shared string for equal texts. A new text is copied first: a slice of a parsed
 * chunk would keep that whole chunk in memory for as long as the cell lives.
 */
export function interner(): (text: string) => string {
  const known = new Map<string, string>();
  return (text) => {
    const shared = known.get(text);
    if (shared !== undefined) return shared;
    const copy = ` ${text}`.slice(1);
    known.set(copy, copy);
    return copy;
  };
}
