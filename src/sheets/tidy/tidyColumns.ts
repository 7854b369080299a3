import type { TableKind } from '../../audit/read/tables/vocabulary.ts';
import type { TidyColumn, TidyList } from '../../audit/read/tidy/tidyList.ts';
import type { MeaningId } from '../../audit/read/understand/meanings/meaning.ts';
import { capital } from '../../audit/model/wording.ts';

/** One column of a tidy sheet: a meaning, the unit of each row of the one before it, or where a value comes from. */
export interface SheetColumn {
  readonly is: 'value' | 'unit' | 'source';
  readonly id: MeaningId;
  readonly header: string;
  readonly width: number;
}

/** The columns of one table: tag and machine, its own meanings, each with its unit in the header or beside it, and the sources. */
export function columnsFor(kind: TableKind, list: TidyList): readonly SheetColumn[] {
  const own = list.columns.filter(
    ({ id, table }) => table === kind && id !== 'tag' && id !== 'machine' && isFilled(id, list),
  );
  const hasMachines = kind === 'channels' && list.channels.some(({ machine }) => machine !== '');
  return [
    value('tag', 'Tag', 18),
    ...(hasMachines ? [value('machine', 'Machine', 20)] : []),
    ...own.flatMap((column) => valueColumns(column, list)),
    { is: 'source', id: 'tag', header: 'Not linked', width: 40 },
  ];
}

function valueColumns({ id, name, holds }: TidyColumn, list: TidyList): SheetColumn[] {
  const width = holds === 'text' ? 18 : 14;
  const units = new Set(list.channels.flatMap(({ values }) => values.get(id)?.unit?.text ?? []));
  const [only] = units;
  if (only === undefined) return [value(id, capital(name), width)];
  if (units.size === 1) return [value(id, `${capital(name)} [${only}]`, width)];
  return [value(id, capital(name), width), { is: 'unit', id, header: 'Unit', width: 10 }];
}

function isFilled(id: MeaningId, { channels }: TidyList): boolean {
  return channels.some(({ values }) => values.has(id));
}

function value(id: MeaningId, header: string, width: number): SheetColumn {
  return { is: 'value', id, header, width };
}
