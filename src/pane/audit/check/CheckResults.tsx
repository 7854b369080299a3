import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import type { Verification } from '../../../evidence/verification.ts';
import { verifyInSteps } from '../../../evidence/verify.ts';
import type { Cancel } from '../../../hosts/port/port.ts';
import { usePort } from '../../app/paneContext.ts';
import { LongDeedPart } from '../../parts/LongDeedPart.tsx';
import { useLongDeed } from '../../parts/useLongDeed.ts';
import { inSlices } from '../run/inSlices.ts';
import { CheckOutcome } from './CheckOutcome.tsx';
import { checkWords } from './checkWords.ts';

type Work = { readonly label: string; readonly part: number };

/** Checks the newest result sheets of the workbook, and says what was edited since. Nothing in the workbook is changed. */
export function CheckResults(): JSX.Element {
  const port = usePort();
  const deed = useLongDeed(checkWords.cancelled);
  const [work, setWork] = useState<Work>({ label: checkWords.reading, part: 0 });
  const [found, setFound] = useState<Verification | null>(null);

  const check = async (cancel: Cancel): Promise<boolean> => {
    setFound(null);
    const showing =
      (label: string) =>
      (part: number): void => {
        setWork({ label, part });
      };
    const workbook = await port.readWorkbook(showing(checkWords.reading), cancel);
    const verification = await inSlices(verifyInSteps(workbook), showing(checkWords.checking), cancel);
    setFound(verification);
    return verification !== null;
  };

  return (
    <LongDeedPart
      deed={deed}
      words={{ button: checkWords.check, hint: checkWords.hint, cancel: checkWords.cancel }}
      work={work}
      start={() => {
        deed.run(check);
      }}
    >
      {found && <CheckOutcome found={found} />}
    </LongDeedPart>
  );
}
