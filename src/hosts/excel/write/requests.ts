import { type Cancel, HostRefused } from '../../port/port.ts';
import { isTooLarge } from '../refusal.ts';

/** Work that goes into one request together with other work. */
export interface Job {
  /** About how many bytes of a request it takes. */
  readonly bytes: number;
  /** Puts its calls into the context's next request. */
  queue(): void;
  /** The same work in two parts; empty where it can't be split. */
  halves(): readonly Job[];
  /** Called once Excel has done it. */
  done?(): void;
}

/**
 * Bytes of a request as jobs count them. Excel on the web accepts 5 MB; what is left over is for what the library adds. Where
 * that was too much after all, less is sent.
 */
const bytesPerRequest = 3_500_000;

/** Does jobs in order in as few requests as they fit into, without calculating in between. Throws HostRefused between two requests once cancelled. */
export async function doJobs(
  context: Excel.RequestContext,
  jobs: Iterable<Job>,
  cancel: Cancel | undefined,
): Promise<void> {
  let pending: Job[] = [];
  let bytes = 0;
  const send = async (): Promise<void> => {
    if (cancel?.cancelled === true)
      throw new HostRefused('Writing was cancelled. The workbook is as it was.');
    await doTogether(context, pending);
    pending = [];
    bytes = 0;
  };
  context.application.suspendScreenUpdatingUntilNextSync();
  for (const job of jobs) {
    if (bytes > 0 && bytes + job.bytes > bytesPerRequest) await send();
    pending.push(job);
    bytes += job.bytes;
  }
  await send();
}

async function doTogether(context: Excel.RequestContext, jobs: readonly Job[]): Promise<void> {
  context.application.suspendApiCalculationUntilNextSync();
  for (const job of jobs) job.queue();
  try {
    await context.sync();
  } catch (error) {
    const parts = isTooLarge(error) ? partsOf(jobs) : [];
    if (parts.length < 2) throw error;
    for (const part of parts) await doTogether(context, part);
    return;
  }
  for (const job of jobs) job.done?.();
}

function partsOf(jobs: readonly Job[]): (readonly Job[])[] {
  if (jobs.length === 1) return (jobs[0]?.halves() ?? []).map((job) => [job]);
  const middle = Math.ceil(jobs.length / 2);
  return [jobs.slice(0, middle), jobs.slice(middle)];
}
