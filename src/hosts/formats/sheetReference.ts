/**
 * Whether a formula, as people type it, refers to one of these sheets or tables. Names are compared without case. A text in the
 * formula that says the same counts too: it is asked about once too often rather than missed.
 */
export function refersTo(
  formula: string,
  { sheets, tables }: { readonly sheets: readonly string[]; readonly tables: readonly string[] },
): boolean {
  const small = formula.toLowerCase();
  const isNamed = (name: string): boolean => {
    const quoted = name.replaceAll("'", "''").toLowerCase();
    const marks = [
      `${quoted}'!`,
      `${quoted}':`,
      `${quoted}:`,
      ...(/^[\w.]+$/u.test(name) ? [`${quoted}!`] : []),
    ];
    return marks.some((mark) => small.includes(mark));
  };
  return sheets.some(isNamed) || tables.some((table) => small.includes(table.toLowerCase()));
}
