import { channelColumns } from '../tables/channelColumns.ts';
import { settingsColumns } from '../tables/settingsColumns.ts';
import type { TableKind } from '../tables/vocabulary.ts';
import { meaning, type MeaningId } from '../understand/meaning.ts';
import type { Claim } from '../understand/tables/claim.ts';
import type { TableRead } from '../understand/tables/tableRead.ts';
import type { TidyColumn, TidyField } from './tidyList.ts';

const order: readonly (readonly [TableKind, readonly MeaningId[]])[] = [
  ['channels', Object.keys(channelColumns) as MeaningId[]],
  ['settings', Object.keys(settingsColumns).filter((id) => id !== 'tag') as MeaningId[]],
];

/** The columns of a list in the order of the template, with the fields from which each is read. */
export function tidyColumns(tables: readonly TableRead[]): TidyColumn[] {
  const claims = new Map<MeaningId, Claim[]>();
  for (const table of tables)
    for (const claim of table.claims.values())
      if (claim.standing === 'certain') {
        const there = claims.get(claim.meaning);
        if (there) there.push(claim);
        else claims.set(claim.meaning, [claim]);
      }
  return order.flatMap(([table, ids]) =>
    ids.flatMap((id): TidyColumn[] => {
      const own = claims.get(id);
      if (!own) return [];
      const { name, holds } = meaning(id);
      return [{ id, name, table, holds, fields: own.map(fieldOf) }];
    }),
  );
}

function fieldOf({ field, unit, evidence }: Claim): TidyField {
  const { block, place, text } = field;
  const part = place.header.at(-1);
  return {
    place: {
      sheet: block.sheet.name,
      row: part?.row ?? block.header[0],
      column: part?.column ?? place.at,
    },
    header: text,
    unit: unit.fixed?.text ?? null,
    evidence,
  };
}
