import type { Page } from 'playwright-core';

interface TraceEvent {
  readonly name: string;
  readonly pid: number;
  readonly tid: number;
  /** Microseconds of the thread's own time, which other programs on the machine do not lengthen. */
  readonly tdur?: number;
  readonly args: { readonly name?: string };
}

const categories = ['toplevel', 'disabled-by-default-devtools.timeline', '__metadata'];

/** Does something and tells how long the longest task of the page's main thread was, frames included: in milliseconds. */
export async function longestTask(page: Page, work: () => Promise<unknown>): Promise<number> {
  const session = await page.context().newCDPSession(page);
  const events: TraceEvent[] = [];
  session.on('Tracing.dataCollected', ({ value }) => {
    for (const event of value) events.push(event as unknown as TraceEvent);
  });
  await session.send('Tracing.start', {
    transferMode: 'ReportEvents',
    traceConfig: { includedCategories: categories },
  });
  await work();
  const complete = new Promise((resolve) => {
    session.once('Tracing.tracingComplete', resolve);
  });
  await session.send('Tracing.end');
  await complete;
  await session.detach();
  const threadOf = ({ pid, tid }: TraceEvent): string => `${pid} ${tid}`;
  const main = new Set(
    events.filter(({ name, args }) => name === 'thread_name' && args.name === 'CrRendererMain').map(threadOf),
  );
  const tasks = events.filter((event) => main.has(threadOf(event)) && event.name.endsWith('RunTask'));
  if (tasks.length === 0) throw new Error('The browser traced no task of the main thread');
  return tasks.reduce((longest, { tdur = 0 }) => Math.max(longest, tdur / 1000), 0);
}
