import { HostRefused } from '../port/port.ts';

/** How long Excel may take for one answer, in ms: a slow network with a large sheet takes a fraction of it. */
export const usualPatience = 180_000;

/** Waits for the answers of Excel to one piece of work. */
export interface Patience {
  /** Rejects with HostRefused once an answer has not come for as long as is waited. */
  readonly silence: Promise<never>;
  /** Counts the answers to the requests of a context, and sends no more of them once it was given up. */
  follow(context: Excel.RequestContext): void;
  /** The work is over, and nothing is waited for any more. */
  end(): void;
}

/**
 * Patience of so many ms. `failed` is the sentence, without its full stop, that says what did not happen; `begun` what may be
 * half done in the workbook.
 */
export function patience(limit: number, failed: string, begun: () => string): Patience {
  let giveUp: (reason: HostRefused) => void = () => undefined;
  let gone: HostRefused | undefined;
  let ended = false;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const silence = new Promise<never>((_, reject) => {
    giveUp = reject;
  });
  // Whoever runs the work listens to it; where the work ends first, nobody has to.
  silence.catch(() => undefined);
  const wait = (): void => {
    clearTimeout(timer);
    if (gone || ended) return;
    timer = setTimeout(() => {
      gone = new HostRefused(
        [
          `${failed}: Excel has not answered for ${words(limit)}.`,
          'Leave the cell that is being edited and close any dialog in Excel, look at the workbook, then try again; restart Excel if it stays.',
          begun(),
        ]
          .filter((part) => part !== '')
          .join(' '),
      );
      giveUp(gone);
    }, limit);
  };
  wait();
  return {
    silence,
    follow(context) {
      const send = context.sync.bind(context);
      context.sync = async <T>(passThroughValue?: T): Promise<T> => {
        if (gone) throw gone;
        wait();
        try {
          return await send(passThroughValue);
        } finally {
          wait();
        }
      };
    },
    end() {
      clearTimeout(timer);
      ended = true;
    },
  };
}

function words(limit: number): string {
  return limit >= 60_000 ? `${Math.round(limit / 60_000)} minutes` : `${limit / 1_000} s`;
}
