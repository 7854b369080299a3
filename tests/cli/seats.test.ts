import { readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { Job } from '../../src/cli/fleet/job.ts';
import type { Limits } from '../../src/cli/fleet/limits.ts';
import { openWorker, answersTo } from '../../src/cli/fleet/worker.ts';
import { newToken } from '../../src/cli/staging.ts';
import { temporaryFolder } from './run.ts';

const folder = temporaryFolder();

/** A program in place of the audit: does what the job's name says, after it has begun to write the copy. */
const module = join(folder, 'program.mjs');
writeFileSync(
  module,
  `import { appendFileSync, writeFileSync } from 'node:fs';
process.on('message', ({ file, copy, token }) => {
  appendFileSync(${JSON.stringify(join(folder, 'pids'))}, process.pid + ' ' + file + '\\n');
  writeFileSync(copy + '.tripdrift-' + token + '.part', 'half');
  if (file.startsWith('hang')) for (;;);
  if (file.startsWith('die')) process.exit(7);
  if (file.startsWith('kill')) process.kill(process.pid, 'SIGKILL');
  if (file.startsWith('greedy')) for (const held = []; ; ) held.push(new Array(1_000_000).fill(held.length));
  process.send({ found: null, refused: 'done ' + file });
  if (file.startsWith('last')) setTimeout(() => process.exit(0), 20);
});
`,
);

const limits: Limits = { processes: 2, memory: 64, time: 60_000 };
const never = new AbortController().signal;

function jobOf(file: string): Job {
  return {
    file,
    path: file,
    options: {},
    copy: join(folder, file),
    report: undefined,
    proposal: undefined,
    token: newToken(),
  };
}

async function refusalsOf(names: readonly string[], own: Partial<Limits> = {}, signal = never) {
  const jobs = names.map(jobOf);
  const program = { module, args: [] };
  const answers = await answersTo(jobs, program, { ...limits, ...own }, signal, () => undefined);
  return answers.map(({ refused }) => refused);
}

const halfOf = (name: string) => readdirSync(folder).filter((file) => file.startsWith(`${name}.`));

/** Ids of the processes that had a job. */
const processesOf = (name: string) =>
  readFileSync(join(folder, 'pids'), 'utf8')
    .split('\n')
    .filter((line) => line.endsWith(` ${name}`))
    .map((line) => line.split(' ')[0] ?? '');

function isAlive(id: string): boolean {
  try {
    return process.kill(Number(id), 0);
  } catch {
    return false;
  }
}

describe('processes that audit', () => {
  test('answer in the order of the jobs, each process one after another', async () => {
    const names = ['a1', 'a2', 'a3', 'a4', 'a5'];
    expect(await refusalsOf(names)).toEqual(names.map((name) => `done ${name}`));
    const used = names.flatMap(processesOf);
    expect(new Set(used).size).toBeLessThanOrEqual(2);
  });

  test('that end, are killed or take too much memory are a reason for their own file alone', async () => {
    const [one, died, killed, greedy, last] = await refusalsOf(['b1', 'die', 'kill', 'greedy', 'b2']);
    expect([one, last]).toEqual(['done b1', 'done b2']);
    expect(died).toContain('ended before it was done (exit code 7)');
    expect(killed).toContain('(SIGKILL), most likely for want of memory');
    expect(greedy).toContain('want of memory');
    for (const name of ['die', 'kill', 'greedy']) expect(halfOf(name)).toEqual([]);
  });

  test('that hang are ended, and the next job has a fresh one', async () => {
    const [hung, next] = await refusalsOf(['hang', 'c2'], { processes: 1, time: 1500 });
    expect(hung).toContain('Given up after 0.025 min');
    expect(next).toBe('done c2');
    expect(halfOf('hang')).toEqual([]);
  });

  test('that end between two jobs are replaced', async () => {
    const worker = openWorker({ module, args: [] }, limits);
    try {
      expect(await worker.work(jobOf('last1'), never)).toMatchObject({ refused: 'done last1' });
      const [first = ''] = processesOf('last1');
      while (isAlive(first)) await new Promise((again) => setTimeout(again, 5));
      expect(await worker.work(jobOf('e2'), never)).toMatchObject({ refused: 'done e2' });
    } finally {
      worker.close();
    }
  });

  test('are all gone once the user stops them', async () => {
    const stop = new AbortController();
    const stopped = refusalsOf(['hang5', 'hang6', 'd7'], {}, stop.signal);
    setTimeout(() => {
      stop.abort(new Error('stopped by the user'));
    }, 1000);
    await expect(stopped).rejects.toThrow('stopped by the user');
    expect([...halfOf('hang5'), ...halfOf('hang6')]).toEqual([]);
    expect(processesOf('d7')).toEqual([]);
    const left = [...processesOf('hang5'), ...processesOf('hang6')];
    expect(left).toHaveLength(2);
    expect(left.filter(isAlive)).toEqual([]);
  });

  test('a program that can’t be started is said', async () => {
    const jobs: Job[] = [
      {
        file: 'x',
        path: 'x',
        options: {},
        copy: undefined,
        report: undefined,
        proposal: undefined,
        token: newToken(),
      },
    ];
    const nowhere = { module: join(folder, 'missing.mjs'), args: [] };
    const [answer] = await answersTo(jobs, nowhere, limits, never, () => undefined);
    expect(answer?.refused).toContain('ended before it was done (exit code 1)');
  });
});
