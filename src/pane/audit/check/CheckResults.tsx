import type { JSX } from 'preact';
import { useRef, useState } from 'preact/hooks';
import type { Verification } from '../../../evidence/verification.ts';
import { verifyInSteps } from '../../../evidence/verify.ts';
import { usePort } from '../../app/paneContext.ts';
import { Notice } from '../../parts/Notice.tsx';
import { plainMessage } from '../../parts/plainMessage.ts';
import { Progress } from '../../parts/Progress.tsx';
import { Said } from '../../parts/Said.tsx';
import { useDeed } from '../../parts/useDeed.ts';
import { inSlices } from '../run/inSlices.ts';
import { CheckOutcome } from './CheckOutcome.tsx';
import { checkWords } from './checkWords.ts';

type Work = { readonly label: string; readonly part: number };

/** Checks the newest result sheets of the workbook, and says what was edited since. Nothing in the workbook is changed. */
export function CheckResults(): JSX.Element {
  const port = usePort();
  const deed = useDeed();
  const cancel = useRef({ cancelled: false });
  const [work, setWork] = useState<Work>({ label: checkWords.reading, part: 0 });
  const [found, setFound] = useState<Verification | null>(null);
  const [cancelled, setCancelled] = useState<string | null>(null);

  const check = async (): Promise<void> => {
    const own = { cancelled: false };
    cancel.current = own;
    setFound(null);
    setCancelled(null);
    const showing =
      (label: string) =>
      (part: number): void => {
        setWork({ label, part });
      };
    try {
      const workbook = await port.readWorkbook(showing(checkWords.reading), own);
      const verification = await inSlices(verifyInSteps(workbook), showing(checkWords.checking), own);
      setFound(verification);
      if (!verification) setCancelled(checkWords.cancelled);
    } catch (error) {
      if (!own.cancelled) throw error;
      setCancelled(plainMessage(error));
    }
  };

  return (
    <div class="deed">
      {deed.busy ? (
        <Progress
          label={work.label}
          part={work.part}
          cancelText={checkWords.cancel}
          onCancel={() => {
            cancel.current.cancelled = true;
          }}
        />
      ) : (
        <button
          type="button"
          class="button"
          onClick={() => {
            deed.run(check);
          }}
        >
          {checkWords.check}
        </button>
      )}
      <span class="quiet">{checkWords.hint}</span>
      {deed.refusal !== null && (
        <Notice tone="problem">
          <Said text={deed.refusal} />
        </Notice>
      )}
      {cancelled !== null && (
        <Notice tone="note">
          <Said text={cancelled} />
        </Notice>
      )}
      {found && <CheckOutcome found={found} />}
    </div>
  );
}
