import { columnLetters } from '../../../cells/address.ts';
import { factOf, type Place as CellPlace } from '../../model/findings.ts';
import type { RuleId, RuleValues } from '../../model/rules/rules.ts';
import type { Diagnostic } from '../rows/diagnostic.ts';
import type { Place } from '../understand/blocks/block.ts';
import { meaning, type MeaningId } from '../understand/meanings/meaning.ts';
import type { ReadChannel, Trouble } from '../understand/readings/channel.ts';

/** A place with its column's letters, as findings have it. */
export function lettered({ sheet, row, column }: Place): CellPlace {
  return { sheet, row, column: columnLetters(column) };
}

/** What keeps a meaning of a channel from being known, each with the cell to look at. */
export function troubleRemarks({ tag, troubles }: ReadChannel): { remark: Diagnostic; place: Place }[] {
  return troubles.flatMap((trouble) => {
    const [place] = trouble.places;
    if (!place) return [];
    return trouble.meanings.map((id) => ({ remark: ofTrouble(trouble, tag, id), place }));
  });
}

function ofTrouble(trouble: Trouble, tag: string, id: MeaningId): Diagnostic {
  const places = trouble.places.map(lettered);
  const say = <R extends RuleId>(rule: R, values: RuleValues[R]): Diagnostic => ({
    ...factOf(rule, 'warning', values),
    column: id,
  });
  switch (trouble.is) {
    case 'twice':
      return say('duplicate-tag', { kind: 'in channel list', tag, rows: places.map(({ row }) => row) });
    case 'rival tables':
      return say('lists-differ', { quantity: meaning(id).name, places });
    case 'machine not said':
      return say('machine-not-said', { tag, places });
  }
}
