import { recordParts } from '../../tables/recordParts.ts';
import { meaning, type MeaningId } from '../meaning.ts';
import type { Claim, OpenField } from './claim.ts';
import type { Lane } from './lane.ts';

/**
 * Whether a lane is a table of checks with a known vibration: its headers say so for certain, and no column beside those of
 * the check could mean anything that a channel needs. Records are looked for by these very headers, so nothing is to be asked.
 */
export function isCheckTable(
  { block }: Lane,
  claims: ReadonlyMap<MeaningId, Claim>,
  open: readonly OpenField[],
): boolean {
  if (block.lies !== 'rows') return false;
  const [first, last] = block.header;
  const needed = [...claims.values()].filter((claim) => meaning(claim.meaning).needed);
  const fields = [
    ...needed.map(({ field }) => field),
    ...open
      .filter(({ looksLike }) => looksLike === 'sensitivity' || looksLike === 'level')
      .map(({ field }) => field),
  ];
  for (let row = first; row <= last; row++) {
    const isOfCheck = recordParts(block.sheet, row, () => true).some((columns) => {
      const ids = new Set(columns.map(({ id }) => id));
      const own = new Set(columns.map(({ column }) => column));
      const isCheck = ids.has('tag') && ids.has('displacement') && ids.has('volts') && !ids.has('gap');
      return isCheck && fields.every(({ place }) => own.has(place.at));
    });
    if (isOfCheck) return true;
  }
  return false;
}
