import type { Workbook } from '../../../cells/sheet.ts';
import type { ColumnMap } from '../../model/columnMap.ts';
import type { Steps } from '../../model/steps.ts';
import { answersIn } from './answers/fromMap.ts';
import { speedSheets } from '../runup/readRunUps.ts';
import { trendSheets, withoutSheets } from '../trend/findTrends.ts';
import { findBlocks } from './blocks/findBlocks.ts';
import { fieldQuestions } from './questions/fieldQuestions.ts';
import { listQuestions } from './questions/listQuestions.ts';
import { machineQuestions } from './questions/machineQuestions.ts';
import { nameQuestions } from './questions/nameQuestions.ts';
import { proposalOf } from './questions/proposal.ts';
import type { Question } from './questions/question.ts';
import { unitQuestions } from './questions/unitQuestions.ts';
import { valueQuestions } from './questions/valueQuestions.ts';
import type { ReadChannel } from './readings/channel.ts';
import { readChannels } from './readings/readChannels.ts';
import { readTables } from './tables/readTables.ts';
import type { TableRead } from './tables/tableRead.ts';
import { notUsed } from './unread/notRead.ts';
import type { NotUsed } from './unread/notUsed.ts';
import { AuditRefused } from '../../model/refused.ts';

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

/** What a workbook says, as far as it is understood: plain data but for the cells that its tables stand on. */
export interface Understanding {
  /** Every area with headers, with what its fields mean, by which evidence, and what part it plays. */
  readonly tables: readonly TableRead[];
  /** What is certain, or was answered, of every channel. */
  readonly channels: readonly ReadChannel[];
  /** What a person has to be asked, what most hangs on first. */
  readonly questions: readonly Question[];
  /** What looks like a part of the audit and was not used. */
  readonly notUsed: readonly NotUsed[];
  /** All that was understood and all proposals accepted, as a map to give back. */
  readonly proposal: ColumnMap;
}

/** How a workbook is understood, with what a person said about it. */
export type Understand = (all: Workbook, answers?: ColumnMap) => Steps<void, Understanding>;

/** Understands a workbook, with what a person said about it. Goes step by step, so that a screen stays alive. */
export function* understand(all: Workbook, answers: ColumnMap = {}): Steps<void, Understanding> {
  const workbook = withoutSheets(all, [...trendSheets(all, answers), ...speedSheets(all, answers)]);
  const said = answersIn(answers);
  const blocks = yield* findBlocks(workbook);
  const tables = yield* readTables(workbook, blocks, said);
  const sheets = new Map(workbook.sheets.map((sheet) => [sheet.name, sheet]));
  const read = yield* readChannels(tables, sheets, said);
  const { channels } = read;
  const questions = [
    ...fieldQuestions(tables),
    ...unitQuestions(tables, channels),
    ...listQuestions(channels),
    ...machineQuestions(tables, channels),
    ...nameQuestions(channels, said.names),
    ...valueQuestions(tables, channels, sheets),
  ];
  questions.sort((one, other) => Number(other.needed) - Number(one.needed) || other.records - one.records);
  yield;
  return {
    tables,
    channels,
    questions,
    notUsed: notUsed(workbook, blocks, tables, read),
    proposal: proposalOf(tables, questions, answers),
  };
}
