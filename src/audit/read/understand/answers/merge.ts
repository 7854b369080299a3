import type { ColumnMap, MappedTable } from '../../../model/columnMap.ts';

/** Two maps as one; what the second says holds where both say something. */
export function mergeMaps(one: ColumnMap, other: ColumnMap): ColumnMap {
  const tables: MappedTable[] = [...(one.tables ?? [])];
  for (const said of other.tables ?? []) {
    const at = tables.findIndex((table) => isSame(table, said));
    const there = tables[at];
    if (!there) {
      tables.push(said);
      continue;
    }
    const columns = { ...there.columns, ...said.columns };
    const units = { ...there.units, ...said.units };
    tables[at] = {
      ...there,
      ...said,
      ...(Object.keys(columns).length > 0 ? { columns } : {}),
      ...(Object.keys(units).length > 0 ? { units } : {}),
    };
  }
  const marks = [...(one.notOfAudit ?? []), ...(other.notOfAudit ?? [])];
  const names = { ...one.names, ...other.names };
  const cells = { ...one.cells, ...other.cells };
  return {
    ...one,
    ...other,
    ...(tables.length > 0 ? { tables } : {}),
    ...(marks.length > 0 ? { notOfAudit: marks } : {}),
    ...(Object.keys(names).length > 0 ? { names } : {}),
    ...(Object.keys(cells).length > 0 ? { cells } : {}),
  };
}

function isSame(one: MappedTable, other: MappedTable): boolean {
  return (
    one.sheet === other.sheet &&
    one.header === other.header &&
    one.lies === other.lies &&
    one.from === other.from &&
    one.probe === other.probe
  );
}
