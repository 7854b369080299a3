import { columnLetters } from '../../src/cells/address.ts';
import type { Workbook } from '../../src/cells/sheet.ts';
import { audit } from '../../src/audit/audit.ts';
import type { ColumnMap } from '../../src/audit/model/columnMap.ts';
import { parseColumnMap } from '../../src/audit/model/columnMap.ts';
import { parsePolicy } from '../../src/audit/model/policy.ts';
import { AuditRefused } from '../../src/audit/model/refused.ts';
import { nameOfColumn } from '../../src/audit/read/tables/vocabulary.ts';
import { NotUnderstood } from '../../src/audit/read/understand/understand.ts';
import type { Question } from '../../src/audit/read/understand/questions/question.ts';
import type { Outcome, ProposedPlace } from './judge/outcome.ts';

/** How a workbook is audited: the one thing to change where another reader is to be examined. */
export type Reader = (workbook: Workbook) => Outcome;

const now = new Date('2026-08-01T12:00:00Z');

/** The audit: a report, or a refusal, with what it asks; accepted, it audits again with its proposal as a file would hold it. */
export const audited: Reader = (workbook) => outcomeOf(workbook, {});

function outcomeOf(workbook: Workbook, map: ColumnMap): Outcome {
  try {
    const report = audit(workbook, { policy: parsePolicy({}), now, map });
    const { questions, proposal } = report;
    return {
      report: JSON.parse(JSON.stringify(report)) as unknown,
      refusal: null,
      ...asking(workbook, questions, proposal),
    };
  } catch (error) {
    if (!(error instanceof AuditRefused)) throw error;
    const asked =
      error instanceof NotUnderstood
        ? asking(workbook, error.questions, error.proposal)
        : { proposed: [], choice: [], accepted: null };
    return { report: null, refusal: error.message, ...asked };
  }
}

function asking(
  workbook: Workbook,
  questions: readonly Question[],
  proposal: ColumnMap | null,
): Pick<Outcome, 'proposed' | 'choice' | 'accepted'> {
  const asks = questions.length > 0 && proposal !== null;
  return {
    proposed: questions.flatMap(proposedPlaces),
    choice: questions.flatMap(({ subject, options }) =>
      subject.is === 'list in force' || subject.is === 'found or left' ? options.map(({ text }) => text) : [],
    ),
    accepted: asks
      ? () => outcomeOf(workbook, parseColumnMap(JSON.parse(JSON.stringify(proposal)) as unknown))
      : null,
  };
}

function proposedPlaces({ subject, options }: Question): ProposedPlace[] {
  const [first] = options;
  if (subject.is !== 'field' || !first?.field) return [];
  const { sheet, row, column } = first.field.place;
  const meaning = nameOfColumn(subject.meaning).toLowerCase();
  return [{ meaning, sheet, column: columnLetters(column), row }];
}
