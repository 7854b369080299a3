import type { Steps } from '../../../audit/model/steps.ts';
import type { Cancel, OnProgress } from '../../../hosts/port/port.ts';

/** Milliseconds of work before the pane gets its turn; a step that takes longer still ends first. */
const slice = 30;

/** Lets the screen and the user have their turn; a message is not held back in a pane that lies in the background. */
function turn(): Promise<void> {
  return new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      resolve();
    };
    port2.postMessage(null);
  });
}

/** Does long work in slices, so that the pane stays alive; `null` where it was cancelled between two of them. */
export async function inSlices<Result>(
  steps: Steps<number, Result>,
  onProgress: OnProgress,
  cancel: Cancel,
): Promise<Result | null> {
  for (;;) {
    const until = performance.now() + slice;
    do {
      const step = steps.next();
      if (step.done) return step.value;
      onProgress(step.value);
    } while (performance.now() < until);
    await turn();
    if (cancel.cancelled) return null;
  }
}
