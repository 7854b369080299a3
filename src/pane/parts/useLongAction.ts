import { useRef, useState } from 'preact/hooks';
import type { Cancel } from '../../hosts/port/port.ts';
import { plainMessage } from './shownText.ts';

interface Deed {
  readonly busy: boolean;
  readonly refusal: string | null;
  /** Does it unless the last one is still under way; what it throws becomes `refusal`. */
  readonly run: (task: () => Promise<void>) => void;
}

export interface LongAction {
  readonly busy: boolean;
  readonly refusal: string | null;
  /** What there is to say of a deed that was cancelled; `null` otherwise. */
  readonly cancelled: string | null;
  /** Does it unless the last one is still under way. It gives `false` where it ended because it was cancelled. */
  readonly run: (task: (cancel: Cancel) => Promise<boolean>) => void;
  readonly cancel: () => void;
}

/** Something long that a button does, that may fail or be cancelled. `words`: said where it was cancelled without more. */
export function useLongAction(words: string): LongAction {
  const action = useAction();
  const own = useRef({ cancelled: false });
  const [cancelled, setCancelled] = useState<string | null>(null);
  const run = async (task: (cancel: Cancel) => Promise<boolean>): Promise<void> => {
    const cancel = { cancelled: false };
    own.current = cancel;
    setCancelled(null);
    try {
      if (!(await task(cancel))) setCancelled(words);
    } catch (error) {
      if (!cancel.cancelled) throw error;
      setCancelled(plainMessage(error));
    }
  };
  return {
    busy: action.busy,
    refusal: action.refusal,
    cancelled,
    run(task) {
      action.run(() => run(task));
    },
    cancel() {
      own.current.cancelled = true;
    },
  };
}

/** Something that a button does and that may fail: whether it is under way, and why it did not work. */
export function useAction(): Deed {
  const [busy, setBusy] = useState(false);
  const [refusal, setRefusal] = useState<string | null>(null);
  return {
    busy,
    refusal,
    run(task) {
      if (busy) return;
      setBusy(true);
      setRefusal(null);
      task()
        .catch((error: unknown) => {
          setRefusal(plainMessage(error));
        })
        .finally(() => {
          setBusy(false);
        });
    },
  };
}
