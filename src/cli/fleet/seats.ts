import type { Answer, Job } from './job.ts';
import type { Limits } from './limits.ts';
import { openSeat, type Program } from './seat.ts';

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
    const seat = openSeat(program, limits);
    try {
      for (const [index, job] of waiting) {
        answers[index] = await seat.work(job, signal);
        onDone();
      }
    } finally {
      seat.close();
    }
  };
  const seats = Array.from({ length: Math.min(limits.processes, jobs.length) }, takeSeat);
  // All must have ended before anything is cleared away, also where one of them failed.
  const ends = await Promise.allSettled(seats);
  for (const end of ends) if (end.status === 'rejected') throw end.reason;
  return answers;
}
