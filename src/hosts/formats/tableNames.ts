/**
 * A free table name for each wanted one, in order. Names of tables and defined names of a workbook are compared without
 * case and must differ (ECMA-376 part 1, 18.5.1.2, `displayName`); a taken one gets a number from 2 on.
 */
export function freeTableNames(wanted: readonly string[], taken: Iterable<string>): readonly string[] {
  const known = new Set(Array.from(taken, (name) => name.toLowerCase()));
  return wanted.map((name) => {
    let free = name;
    for (let number = 2; known.has(free.toLowerCase()); number++) free = `${name}${number}`;
    known.add(free.toLowerCase());
    return free;
  });
}
