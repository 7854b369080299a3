import * as clack from '@clack/prompts';
import { questionText } from '../../../audit/advise/questions/questionText.ts';
import { understoodText } from '../../../audit/advise/questions/understoodText.ts';
import type { Option, Question } from '../../../audit/read/understand/questions/question.ts';
import type { Understanding } from '../../../audit/read/understand/understand.ts';
import { UsageRefused } from '../../refused.ts';
import { Stopped } from '../../stop.ts';
import { plain } from '../../terminal.ts';

/** A question with the option that a person chose. */
export type Answer = readonly [question: Question, option: Option];

/** Longest text from a workbook that is shown whole. */
const longest = 300;
/** Exit code of a command ended by Ctrl-C, as shells count it. */
const interrupted = 130;

/** Says what of a workbook was understood, and what was not, before anything is asked. */
export function showUnderstanding(name: string, understanding: Understanding): void {
  const { understood, notUnderstood } = understoodText(understanding);
  clack.intro(shown(name));
  clack.log.message([understood, notUnderstood].map(shown).join('\n'));
}

/** Says that all is asked that is to be asked. */
export function end(answered: number): void {
  clack.outro(answered === 0 ? 'Nothing answered.' : `${answered} answered.`);
}

/**
 * Asks a person at the terminal; what stays open is left out. Rejects with the reason of `signal` once that is aborted.
 * @throws Stopped where the person ends it.
 */
export async function askQuestions(
  questions: readonly Question[],
  signal: AbortSignal,
): Promise<readonly Answer[]> {
  if (questions.length > 1) {
    clack.log.message(questions.map((question) => shown(questionText(question).question)).join('\n'));
    const how = await chosen(
      {
        message: `${questions.length} questions. How do you want to answer?`,
        options: [
          { value: 'each', label: 'One by one', hint: 'with what speaks for each' },
          { value: 'all', label: `Yes to all ${questions.length}` },
          { value: 'none', label: 'Leave them open', hint: 'only what is certain is audited' },
        ],
      },
      signal,
    );
    if (how === 'none') return [];
    if (how === 'all') return questions.flatMap((question) => proposed(question));
  }
  const answers: Answer[] = [];
  for (const [index, question] of questions.entries()) {
    answers.push(...(await answerTo(question, `${index + 1} of ${questions.length}`, signal)));
  }
  return answers;
}

function proposed(question: Question): readonly Answer[] {
  const [first] = question.options;
  return first ? [[question, first]] : [];
}

/** Yes, no, or another one; nothing where it stays open. */
async function answerTo(question: Question, count: string, signal: AbortSignal): Promise<readonly Answer[]> {
  const { question: asked, stakes, evidence, options } = questionText(question);
  clack.log.message([stakes, ...evidence].map(shown).join('\n'));
  const others = question.options.length > 1;
  const yes = options[0];
  const said = await chosen(
    {
      message: `${count}. ${shown(asked)}`,
      options: [
        { value: 'yes', label: 'Yes', hint: shown(yes?.detail ?? '') },
        { value: 'no', label: 'No', hint: 'it stays open' },
        ...(others ? [{ value: 'other', label: 'Other …', hint: `${options.length - 1} more` }] : []),
      ],
    },
    signal,
  );
  if (said === 'yes') return proposed(question);
  if (said === 'no') return [];
  const which = await chosen(
    {
      message: `${count}. Which one?`,
      options: [
        ...options.slice(1).map(({ label, detail }, index) => ({
          value: String(index + 1),
          label: shown(label),
          hint: shown(detail),
        })),
        { value: '', label: 'Leave it open' },
      ],
    },
    signal,
  );
  const option = which === '' ? undefined : question.options[Number(which)];
  return option ? [[question, option]] : [];
}

/**
 * The file in which a person wants the answers kept; `undefined` where none is wanted. `check` refuses a name.
 * @throws Stopped where the person ends it.
 */
export async function askAnswersFile(
  usual: string,
  check: (given: string) => void,
  signal: AbortSignal,
): Promise<string | undefined> {
  const keep = await chosen(
    {
      message: 'Keep the answers in a file, so that they are not asked again?',
      options: [
        { value: 'yes', label: 'Yes' },
        { value: 'no', label: 'No' },
      ],
    },
    signal,
  );
  if (keep === 'no') return undefined;
  return heard(
    await clack.text({
      message: 'Name of the file',
      initialValue: usual,
      validate: (given) => refusal(given ?? '', check),
      signal,
    }),
    signal,
  );
}

function refusal(given: string, check: (given: string) => void): string | undefined {
  if (given.trim() === '') return 'Give it a name.';
  try {
    check(given);
    return undefined;
  } catch (error) {
    if (!(error instanceof UsageRefused)) throw error;
    return plain(error.message);
  }
}

interface Choice {
  readonly message: string;
  readonly options: readonly { readonly value: string; readonly label: string; readonly hint?: string }[];
}

async function chosen({ message, options }: Choice, signal: AbortSignal): Promise<string> {
  const shownOptions = options.map(({ hint, ...rest }) =>
    hint === undefined || hint === '' ? rest : { ...rest, hint },
  );
  return heard(await clack.select<string>({ message, options: shownOptions, signal }), signal);
}

/** What was entered; a person who ends a question ends the command. */
function heard(entered: string | symbol, signal: AbortSignal): string {
  signal.throwIfAborted();
  if (typeof entered === 'symbol') throw new Stopped(interrupted);
  return entered;
}

function shown(text: string): string {
  return plain(text, longest);
}
