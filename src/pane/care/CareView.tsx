import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { caution } from '../../audit/model/caution.ts';
import { version } from '../../audit/model/version.ts';
import { usePort } from '../app/paneContext.ts';
import { BrokenFormulas } from './BrokenFormulas.tsx';
import { careWords, helpAddress } from './careWords.ts';
import { Recalculate } from './Recalculate.tsx';

/** Whether the functions work, what to do when they don't, and what the results rest on. */
export function CareView({ shown }: { shown: boolean }): JSX.Element {
  return (
    <>
      <h2>{careWords.title}</h2>
      <h3>{careWords.functions}</h3>
      <FunctionsLine shown={shown} />
      <h3>{careWords.broken}</h3>
      <BrokenFormulas />
      <h3>{careWords.recalculation}</h3>
      <Recalculate />
      <h3>{careWords.sharing}</h3>
      <p>{careWords.sharingHow}</p>
      <h3>{careWords.rules}</h3>
      <p>{careWords.rulesVersion(version)}</p>
      <h3>{careWords.caution}</h3>
      <p>{caution}</p>
      <h3>{careWords.help}</h3>
      <p>
        {careWords.helpText}{' '}
        <a href={helpAddress} target="_blank" rel="noreferrer">
          {careWords.helpLink}
        </a>
      </p>
    </>
  );
}

/** Looks anew whenever the view is opened: the answer changes with the cells of the workbook. */
function FunctionsLine({ shown }: { shown: boolean }): JSX.Element {
  const port = usePort();
  const [ready, setReady] = useState<boolean | null | 'looking'>('looking');
  useEffect(() => {
    if (!shown) return;
    setReady('looking');
    port.functionsReady().then(setReady, () => {
      setReady(null);
    });
  }, [port, shown]);
  if (ready === 'looking') return <p role="status">{careWords.looking}</p>;
  const said = ready === null ? careWords.unknown : ready ? careWords.ready : careWords.notReady;
  return <p role="status">{said}</p>;
}
