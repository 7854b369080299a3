import process from 'node:process';

const signals = { SIGINT: 130, SIGTERM: 143, SIGHUP: 129 } as const;

/** The user ended the command; `exitCode` is 128 and the number of the signal, as shells count it. */
export class Stopped extends Error {
  override readonly name = 'Stopped';

  constructor(readonly exitCode: number) {
    super('stopped');
  }
}

/** Hears that the command is to end, so that its processes and unfinished files can be cleared away first. */
export interface StopWatch {
  /** Aborted with `Stopped` as its reason. */
  readonly signal: AbortSignal;
  readonly release: () => void;
}

/** Begins to hear Ctrl-C and its kin. */
export function watchStop(): StopWatch {
  const controller = new AbortController();
  const heard = (Object.entries(signals) as [keyof typeof signals, number][]).map(([name, exitCode]) => {
    const stop = (): void => {
      controller.abort(new Stopped(exitCode));
    };
    process.on(name, stop);
    return () => process.off(name, stop);
  });
  return {
    signal: controller.signal,
    release: () => {
      for (const forget of heard) forget();
    },
  };
}

/** Does what leaves files behind unless it is told of a stop; `work` ends by itself once its signal is aborted. */
export async function unlessStopped<T>(work: (signal: AbortSignal) => Promise<T>): Promise<T> {
  const stop = watchStop();
  try {
    return await work(stop.signal);
  } finally {
    stop.release();
  }
}
