import { core, meaning, type MeaningId } from '../meaning.ts';
import { signsOf, standingOf } from '../standing/certainties.ts';
import type { Claim } from './claim.ts';
import type { TableRead } from './tableRead.ts';

/** Meanings that belong together: what is set in the monitor, and what was found of the probes. */
const sides: readonly (readonly MeaningId[])[] = [
  ['configured', 'alert', 'danger'],
  ['measured', 'asLeftSensitivity'],
];

/**
 * Lists on hidden sheets: where visible ones hold all that they do, they are set aside; under standard headers they count
 * where no visible list has anything of the kind; else a person has to confirm what stands only in them.
 */
export function withHidden(tables: readonly TableRead[]): TableRead[] {
  const visible = new Set(
    tables
      .filter(({ lane, part }) => part === 'channels' && !lane.block.sheet.hidden)
      .flatMap(({ claims }) => [...claims.keys()]),
  );
  return tables.map((table): TableRead => {
    if (!table.lane.block.sheet.hidden || table.part !== 'channels' || table.use === true) return table;
    const own = core.filter((id) => table.claims.has(id));
    if (own.every((id) => visible.has(id))) return { ...table, part: 'none', setAside: true };
    const isAlone = !sides.some(
      (side) => side.some((id) => own.includes(id)) && side.some((id) => visible.has(id)),
    );
    const isStandard = own.every((id) =>
      table.claims.get(id)?.evidence.some(({ is }) => is === 'standard header'),
    );
    if (isAlone && isStandard) return table;
    const claims = new Map([...table.claims].map(([id, claim]) => [id, hidden(claim)] as const));
    return { ...table, claims, tag: claims.get('tag') ?? table.tag };
  });
}

function hidden(claim: Claim): Claim {
  const evidence = [...claim.evidence, { is: 'hidden', what: 'sheet' } as const];
  return { ...claim, evidence, standing: standingOf(meaning(claim.meaning).matter, signsOf(evidence)) };
}
