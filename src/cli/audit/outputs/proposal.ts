import { explainedProposal } from '../../../audit/advise/questions/explainedProposal.ts';
import type { ColumnMap } from '../../../audit/model/columnMap.ts';
import type { Understanding } from '../../../audit/read/understand/understand.ts';
import { checkWritable } from '../../checkWritable.ts';
import { inPieces, writeAll } from '../../writeAll.ts';
import type { Options } from '../options.ts';
import { type OutputKind, filesRead } from './wanted.ts';

/** `--propose FILE`: what was understood and what is proposed, as a map to check and give back; or a person's answers. */
export const proposalFile: OutputKind = {
  check(options) {
    const { propose, force } = options;
    if (propose === undefined || propose === '-') return;
    checkWritable(propose, filesRead(options), force);
  },
  output({ propose }, { proposal }) {
    if (propose === undefined || propose === '-' || proposal === null) return undefined;
    return { ...inPieces(propose, [mapJson(proposal)]), said: () => [`Written: ${propose}, for --map.`] };
  },
};

/**
 * Writes the proposal alone, where nothing could be audited. Rejects with the reason of `signal` once that is aborted.
 * @throws UsageRefused where it can't be written.
 */
export async function writeProposal(
  { propose }: Options,
  proposal: ColumnMap | null,
  signal: AbortSignal,
): Promise<void> {
  if (propose === undefined || propose === '-' || proposal === null) return;
  await writeAll([inPieces(propose, [mapJson(proposal)])], { signal });
}

/** All that was understood and all that is proposed, each with its evidence. */
export function proposalOf({ proposal, questions }: Understanding): ColumnMap {
  return explainedProposal(
    proposal,
    questions.flatMap((question) =>
      question.options.slice(0, 1).map((option) => [question, option] as const),
    ),
  );
}

/** A map as the text of a file. */
export function mapJson(map: ColumnMap): string {
  return `${JSON.stringify(map, null, 2)}\n`;
}
