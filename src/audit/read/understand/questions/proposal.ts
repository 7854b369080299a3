import type { ColumnMap, MappedField, MappedTable } from '../../../model/columnMap.ts';
import { fieldName, mappedTableOfLane } from '../answers/places.ts';
import { mergeMaps } from '../answers/merge.ts';
import { evidenceTexts } from '../evidenceText.ts';
import { meaning } from '../meaning.ts';
import type { TableRead } from '../tables/tableRead.ts';
import type { Question } from './question.ts';

/** A map with all that was understood and all that is proposed, each line with its evidence: to be checked, corrected, given back. */
export function proposalOf(
  tables: readonly TableRead[],
  questions: readonly Question[],
  said: ColumnMap,
): ColumnMap {
  const understood = tables.filter(({ part, leftOut }) => part === 'channels' && !leftOut).map(tableSaid);
  return mergeMaps(mergeMaps(mergeMaps({ tables: understood }, said), acceptedAnswers(questions)), {});
}

function tableSaid({ lane, claims, machine }: TableRead): MappedTable {
  const columns: Record<string, MappedField> = {};
  for (const [id, { field, unit, evidence, standing }] of claims) {
    if (standing !== 'certain') continue;
    columns[meaning(id).name] = {
      at: fieldName(field),
      header: field.text,
      ...(unit.fixed ? { unit: unit.fixed.text } : {}),
      evidence: evidenceTexts(evidence),
    };
  }
  const own: MappedTable = { ...mappedTableOfLane(lane), columns };
  return machine?.standing === 'certain'
    ? { ...own, machine: machine.name, evidence: evidenceTexts([machine.evidence]) }
    : own;
}

/** The answers to the proposals of questions, all accepted. */
function acceptedAnswers(questions: readonly Question[]): ColumnMap {
  return questions.reduce<ColumnMap>((map, { options }) => mergeMaps(map, options[0]?.answer ?? {}), {});
}
