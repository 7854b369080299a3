import type { ColumnMap } from '../../model/columnMap.ts';
import { AuditRefused } from '../../model/refused.ts';
import type { Question } from './questions/question.ts';
import type { Understanding } from './understand.ts';

/** Nothing of a workbook could be judged without a person: what to ask, and what answers it as it is proposed. */
export class NotUnderstood extends AuditRefused {
  /** What has to be asked, what most hangs on first. */
  readonly questions: readonly Question[];
  /** All that was understood, with every proposal accepted, to be given back as a column map. */
  readonly proposal: ColumnMap;

  constructor(
    message: string,
    readonly understanding: Understanding,
  ) {
    super(message);
    this.questions = understanding.questions;
    this.proposal = understanding.proposal;
  }
}
