import { parse } from 'node:path';
import { explainedProposal } from '../../../audit/advise/questions/explainedProposal.ts';
import type { AuditOptions } from '../../../audit/audit.ts';
import type { ColumnMap } from '../../../audit/model/columnMap.ts';
import { mergeMaps } from '../../../audit/read/understand/answers/merge.ts';
import type { Progress } from '../../terminal.ts';
import type { Input } from '../input.ts';
import type { Options } from '../options.ts';
import { checkOutputs } from '../outputs/outputs.ts';
import { attempt, type Attempt } from './attempt.ts';
import type { Answer } from './prompts.ts';

/** An audit with the answers that a person gave at the terminal. */
export interface Conversation extends Attempt {
  /** Where the answers go, and what they are; `null` where they are not kept. */
  readonly kept: { readonly file: string; readonly map: ColumnMap } | null;
}

/**
 * Audits what was read; where questions are open, asks a person and audits again with the answers, until nothing new is to
 * be asked. Rejects with the reason of `signal` once that is aborted.
 * @throws Stopped where the person ends it, AuditRefused as the audit does.
 */
export async function conversation(
  input: Input,
  options: Options,
  settings: AuditOptions,
  progress: Progress,
  signal: AbortSignal,
): Promise<Conversation> {
  const answers: Answer[] = [];
  const asked = new Set<string>();
  let map = settings.map ?? {};
  let tried = attempt(input, settings, progress);
  progress.clear();
  if (!tried.open) return { ...tried, kept: null };
  const prompts = await import('./prompts.ts');
  prompts.showUnderstanding(input.workbook.name, tried.open);
  for (;;) {
    const questions = tried.open?.questions.filter(({ id }) => !asked.has(id)) ?? [];
    if (questions.length === 0) break;
    const given = await prompts.askQuestions(questions, signal);
    for (const { id } of questions) asked.add(id);
    if (given.length === 0) break;
    answers.push(...given);
    map = given.reduce((said, [, option]) => mergeMaps(said, option.answer), map);
    tried = attempt(input, { ...settings, map }, progress);
    progress.clear();
  }
  const check = (given: string): void => {
    checkOutputs({ ...options, propose: given });
  };
  const file =
    answers.length === 0 ? undefined : await prompts.askAnswersFile(usualName(options), check, signal);
  prompts.end(answers.length);
  return { ...tried, kept: file === undefined ? null : { file, map: explainedProposal(map, answers) } };
}

function usualName({ inputs: [first = ''] }: Options): string {
  return `${parse(first).name}.map.json`;
}
