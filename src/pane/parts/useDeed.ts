import { useState } from 'preact/hooks';
import { plainMessage } from './plainMessage.ts';

export interface Deed {
  readonly busy: boolean;
  readonly refusal: string | null;
  /** Does it unless the last one is still under way; what it throws becomes `refusal`. */
  readonly run: (action: () => Promise<void>) => void;
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
