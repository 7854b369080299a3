import { fork, type ChildProcess } from 'node:child_process';
import { rmSync } from 'node:fs';
import { partOf } from '../staging.ts';
import { isSystemError } from '../refused.ts';
import type { Answer, Job } from './job.ts';
import type { Limits } from './limits.ts';

/** What runs in the process of a seat: a module that answers jobs, with its arguments. */
export interface Program {
  readonly module: string;
  readonly args: readonly string[];
}

/** A place for one process, which audits one workbook after another and is replaced where it ends. */
export interface Worker {
  /**
   * Has a job done. A process that takes too long, or ends before it has answered, is a reason, and leaves no file behind.
   * Rejects with the reason of `signal` once that is aborted and the process has ended.
   */
  readonly work: (job: Job, signal: AbortSignal) => Promise<Answer>;
  /** Lets the process end. */
  readonly close: () => void;
}

/** A seat whose process starts with its first job. */
export function openWorker(program: Program, limits: Limits): Worker {
  let child: ChildProcess | undefined;
  return {
    async work(job, signal) {
      signal.throwIfAborted();
      if (child === undefined || hasEnded(child)) child = start(program, limits);
      const { answer, why } = await endOf(child, job, limits.time, signal);
      if (answer) return answer;
      removeUnfinished(job);
      signal.throwIfAborted();
      return { found: null, refused: why, asks: null };
    },
    close() {
      if (child?.connected) child.disconnect();
    },
  };
}

function hasEnded(child: ChildProcess): boolean {
  return child.killed || child.exitCode !== null || child.signalCode !== null || child.pid === undefined;
}

function start({ module, args }: Program, { memory }: Limits): ChildProcess {
  return fork(module, args, {
    execArgv: [...process.execArgv, `--max-old-space-size=${memory}`, '--heap-growing-percent=30'],
    serialization: 'advanced',
    stdio: ['ignore', 'ignore', 'ignore', 'ipc'],
  });
}

/** How a job ended: with an answer, or why there is none; the process is gone then. */
interface End {
  readonly answer: Answer | undefined;
  readonly why: string;
}

function endOf(child: ChildProcess, job: Job, time: number, signal: AbortSignal): Promise<End> {
  return new Promise((resolve) => {
    let answer: Answer | undefined;
    const kill = (): void => {
      child.kill('SIGKILL');
    };
    const timer = setTimeout(kill, time);
    const settle = (why: string): void => {
      clearTimeout(timer);
      signal.removeEventListener('abort', kill);
      child.off('message', onMessage).off('exit', onExit).off('error', onError);
      resolve({ answer, why });
    };
    const onMessage = (message: unknown): void => {
      answer = message as Answer;
      // One that is being ended all the same is waited for.
      if (!child.killed) settle('');
    };
    const onExit = (code: number | null, by: NodeJS.Signals | null): void => {
      settle(child.killed ? tookTooLong(time) : ended(by ?? `exit code ${code ?? 0}`));
    };
    const onError = (error: Error): void => {
      settle(`No process could be started for it: ${error.message}.`);
    };
    child.on('message', onMessage).on('exit', onExit).on('error', onError);
    signal.addEventListener('abort', kill);
    // A process that is gone already says so by its end.
    child.send(job, () => undefined);
  });
}

function tookTooLong(time: number): string {
  const minutes = Number((time / 60_000).toPrecision(2));
  return `Given up after ${minutes} min. Allow more with --timeout MINUTES, or audit it by itself.`;
}

function ended(how: string): string {
  return `Its process ended before it was done (${how}), most likely for want of memory. Audit it by itself, or in parts.`;
}

/** What can't be removed is named by the next audit. */
function removeUnfinished({ copy, report, proposal, token }: Job): void {
  for (const path of [copy, report, proposal]) {
    try {
      if (path !== undefined) rmSync(partOf(path, token), { force: true });
    } catch (error) {
      if (!isSystemError(error)) throw error;
    }
  }
}

/**
 * Has all jobs done, several at once, each in a process that others do not feel; the answers in the order of the jobs.
 * `onDone` hears of each. Rejects with the reason of `signal` once that is aborted and no process is left.
 */
export async function answersTo(
  jobs: readonly Job[],
  program: Program,
  limits: Limits,
  signal: AbortSignal,
  onDone: () => void,
): Promise<readonly Answer[]> {
  const answers: Answer[] = [];
  const waiting = jobs.entries();
  const takeSeat = async (): Promise<void> => {
    const worker = openWorker(program, limits);
    try {
      for (const [index, job] of waiting) {
        answers[index] = await worker.work(job, signal);
        onDone();
      }
    } finally {
      worker.close();
    }
  };
  const workers = Array.from({ length: Math.min(limits.processes, jobs.length) }, takeSeat);
  // All must have ended before anything is cleared away, also where one of them failed.
  const ends = await Promise.allSettled(workers);
  for (const end of ends) if (end.status === 'rejected') throw end.reason;
  return answers;
}
