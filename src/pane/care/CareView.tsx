import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { caution } from '../../audit/model/caution.ts';
import { version } from '../../audit/model/version.ts';
import { usePort } from '../app/paneContext.ts';
import { Notice } from '../parts/Notice.tsx';
import { Said } from '../parts/Said.tsx';
import { useAction } from '../parts/useLongAction.ts';
import { columnLetters } from '../../cells/address.ts';
import type { CellPlace } from '../../hosts/port/port.ts';
import { CellLink } from '../parts/CellLink.tsx';

/** Texts of the care view. */
const careMessages = {
  title: 'Care',
  functions: 'Worksheet functions',
  looking: 'Checking the worksheet functions…',
  ready: 'The worksheet functions are registered and ready.',
  notReady:
    'The worksheet functions are not registered. Close every workbook, start the program again and open this pane once; the audit works without them.',
  unknown:
    'Whether the worksheet functions are registered is not known: no cell of this workbook uses one. Insert one in Quick answer to see. The audit works without them.',
  broken: 'Formulas that show #NAME?',
  brokenIntro:
    'Happens where a workbook was opened without Tripdrift. Repairing enters the same formula anew.',
  find: 'Find them',
  none: 'None found.',
  found: (count: number) => `${count} ${count === 1 ? 'cell' : 'cells'} found.`,
  repair: (count: number) => `Repair ${count === 1 ? 'this cell' : `these ${count} cells`}`,
  repaired: (count: number) => `${count} ${count === 1 ? 'formula was' : 'formulas were'} entered anew.`,
  more: (count: number) => `and ${count} more`,
  recalculate: 'Recalculate all Tripdrift formulas',
  recalculated: (count: number) =>
    count === 0
      ? 'There is no Tripdrift formula in this workbook.'
      : `${count} ${count === 1 ? 'formula was' : 'formulas were'} calculated anew.`,
  recalculation: 'Recalculation',
  sharing: 'A copy for people without Tripdrift',
  sharingHow:
    'Their program shows #NAME? where a formula calls a Tripdrift function. Save the workbook, open it in the Tripdrift bench and choose “Share…”: values, or native formulas, stand there instead, and your workbook stays as it is.',
  rules: 'Rules',
  rulesVersion: (version: string) =>
    `Version ${version}. It stands beside every result; results of another version may differ.`,
  caution: 'Caution',
  help: 'Help',
  helpText: 'What each function does, each column means and each finding says:',
  helpLink: 'Tripdrift help',
} as const;

/** The help page beside the pane, on the same host. */
const helpAddress = 'help.html';

const shownAtMost = 100;

/** Whether the functions work, what to do when they don't, and what the results rest on. */
export function CareView({ shown }: { shown: boolean }): JSX.Element {
  return (
    <>
      <h2>{careMessages.title}</h2>
      <h3>{careMessages.functions}</h3>
      <FunctionsLine shown={shown} />
      <h3>{careMessages.broken}</h3>
      <BrokenFormulas />
      <h3>{careMessages.recalculation}</h3>
      <Recalculate />
      <h3>{careMessages.sharing}</h3>
      <p>{careMessages.sharingHow}</p>
      <h3>{careMessages.rules}</h3>
      <p>{careMessages.rulesVersion(version)}</p>
      <h3>{careMessages.caution}</h3>
      <p>{caution}</p>
      <h3>{careMessages.help}</h3>
      <p>
        {careMessages.helpText}{' '}
        <a href={helpAddress} target="_blank" rel="noreferrer">
          {careMessages.helpLink}
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
  if (ready === 'looking') return <p role="status">{careMessages.looking}</p>;
  const said = ready === null ? careMessages.unknown : ready ? careMessages.ready : careMessages.notReady;
  return <p role="status">{said}</p>;
}

/** Calculates every Tripdrift formula of the workbook anew. */
function Recalculate(): JSX.Element {
  const port = usePort();
  const action = useAction();
  const [count, setCount] = useState<number | null>(null);
  return (
    <div class="deed">
      <button
        type="button"
        class="button"
        onClick={() => {
          setCount(null);
          action.run(async () => {
            setCount(await port.recalculate());
          });
        }}
      >
        {careMessages.recalculate}
      </button>
      {action.refusal !== null && (
        <Notice tone="problem">
          <Said text={action.refusal} />
        </Notice>
      )}
      {count !== null && <Notice tone="done">{careMessages.recalculated(count)}</Notice>}
    </div>
  );
}

/** Finds cells whose Tripdrift formula lost its function, lists them, and repairs them when asked. */
function BrokenFormulas(): JSX.Element {
  const port = usePort();
  const action = useAction();
  const [found, setFound] = useState<readonly CellPlace[] | null>(null);
  const [repaired, setRepaired] = useState<number | null>(null);
  return (
    <div class="deed">
      <p class="quiet">{careMessages.brokenIntro}</p>
      <button
        type="button"
        class="button"
        onClick={() => {
          setRepaired(null);
          action.run(async () => {
            setFound(await port.findBrokenFormulas());
          });
        }}
      >
        {careMessages.find}
      </button>
      {action.refusal !== null && (
        <Notice tone="problem">
          <Said text={action.refusal} />
        </Notice>
      )}
      {repaired !== null && <Notice tone="done">{careMessages.repaired(repaired)}</Notice>}
      {found !== null && (
        <p role="status">{found.length === 0 ? careMessages.none : careMessages.found(found.length)}</p>
      )}
      {found !== null && found.length > 0 && (
        <>
          <ul class="plain-list">
            {found.slice(0, shownAtMost).map(({ sheet, row, column }) => (
              <li key={`${row} ${column} ${sheet}`}>
                <CellLink sheet={sheet} row={row} column={columnLetters(column)} />
              </li>
            ))}
          </ul>
          {found.length > shownAtMost && <p class="quiet">{careMessages.more(found.length - shownAtMost)}</p>}
          <button
            type="button"
            class="button button-first"
            onClick={() => {
              action.run(async () => {
                setRepaired(await port.repairFormulas(found));
                setFound(await port.findBrokenFormulas());
              });
            }}
          >
            {careMessages.repair(found.length)}
          </button>
        </>
      )}
    </div>
  );
}
