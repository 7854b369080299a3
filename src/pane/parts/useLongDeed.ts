import { useRef, useState } from 'preact/hooks';
import type { Cancel } from '../../hosts/port/port.ts';
import { plainMessage } from './shownText.ts';

interface Deed {
  readonly busy: boolean;
  readonly refusal: string | null;
  /** Does it unless the last one is still under way; what it throws becomes `refusal`. */
  readonly run: (action: () => Promise<void>) => void;
}

export interface LongDeed {
  readonly busy: boolean;
  readonly refusal: string | null;
  /** What there is to say of a deed that was cancelled; `null` otherwise. */
  readonly cancelled: string | null;
  /** Does it unless the last one is still under way. It gives `false` where it ended because it was cancelled. */
  readonly run: (action: (cancel: Cancel) => Promise<boolean>) => void;
  readonly cancel: () => void;
}

/** Something long that a button does, that may fail or be cancelled. `words`: said where it was cancelled without more. */
export function useLongDeed(words: string): LongDeed {
  const deed = useDeed();
  const own = useRef({ cancelled: false });
  const [cancelled, setCancelled] = useState<string | null>(null);
  const run = async (action: (cancel: Cancel) => Promise<boolean>): Promise<void> => {
    const cancel = { cancelled: false };
    own.current = cancel;
    setCancelled(null);
    try {
      if (!(await action(cancel))) setCancelled(words);
    } catch (error) {
      if (!cancel.cancelled) throw error;
      setCancelled(plainMessage(error));
    }
  };
  return {
    busy: deed.busy,
    refusal: deed.refusal,
    cancelled,
    run(action) {
      deed.run(() => run(action));
    },
    cancel() {
      own.current.cancelled = true;
    },
  };
}

/** Something that a button does and that may fail: whether it is under way, and why it did not work. */
export function useDeed(): Deed {
  const [busy, setBusy] = useState(false);
  const [refusal, setRefusal] = useState<string | null>(null);
  return {
    busy,
    refusal,
    run(action) {
      if (busy) return;
      setBusy(true);
      setRefusal(null);
      action()
        .catch((error: unknown) => {
          setRefusal(plainMessage(error));
        })
        .finally(() => {
          setBusy(false);
        });
    },
  };
}
