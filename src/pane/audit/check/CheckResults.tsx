import type { JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import {
  type Verification,
  coverageWithoutFile,
  isClean,
  type PartCheck,
  type AuditRun,
} from '../../../evidence/verification.ts';
import { verifyInSteps } from '../../../evidence/verify.ts';
import type { Cancel } from '../../../hosts/port/port.ts';
import { usePort } from '../../app/paneContext.ts';
import { LongActionPart } from '../../parts/LongActionPart.tsx';
import { Notice } from '../../parts/Notice.tsx';
import { plainMessage } from '../../parts/shownText.ts';
import { useLongAction } from '../../parts/useLongAction.ts';
import { inSlices } from '../run/inSlices.ts';
import { Said } from '../../parts/Said.tsx';
import { CellLink } from '../../parts/CellLink.tsx';
import { clockTime } from '../auditMessages.ts';

/** Texts of the check of result sheets. */
const checkMessages = {
  check: 'Check results',
  hint: 'Tells whether inputs, policy or results were edited since the newest result sheets were written.',
  reading: 'Reading the workbook',
  checking: 'Checking the results',
  cancel: 'Cancel',
  cancelled: 'Cancelled. Nothing was checked.',
  changed: 'The workbook was changed after this check.',
  changedUnwritten:
    'The workbook was changed since the audit, and there are no result sheets to check. Run the audit again.',
  nothing: 'There are no result sheets to check. Run the audit and write them first.',
  without: 'These result sheets carry no evidence and can’t be checked:',
  clean: 'Nothing was edited since this audit.',
  edited: 'Changed since the audit.',
  parts: { inputs: 'Inputs', policy: 'Policy', results: 'Results' },
  older: 'Result sheets of other audits, not checked',
  should: { inputs: 'was', policy: 'was', results: 'should be' },
  empty: 'empty',
  more: (count: number) => `and ${count} more cells`,
} as const;

const stateWords: Readonly<Record<PartCheck['state'], string>> = {
  'as audited': 'as audited',
  edited: 'edited',
  'not known': 'not known',
};

interface CheckedPartProps {
  readonly part: keyof typeof checkMessages.parts;
  readonly check: PartCheck;
}

interface CheckOutcomeProps {
  readonly found: Verification;
  /** The workbook was changed since the audit that the pane shows. */
  readonly stale: boolean;
}

type Work = { readonly label: string; readonly part: number };

/** How long the workbook must rest after an edit before it is checked again, and how long a check may take for that. */
const rest = 700;
const mostForAgain = 3_000;

/**
 * Checks the newest result sheets of the workbook, and says what was edited since. An edit after the check turns it red at once
 * and has it made again, where that is quick. Nothing in the workbook is changed. `stale`: it was changed since the audit.
 */
export function CheckResults({ stale }: { stale: boolean }): JSX.Element {
  const port = usePort();
  const action = useLongAction(checkMessages.cancelled);
  const [work, setWork] = useState<Work>({ label: checkMessages.reading, part: 0 });
  const [found, setFound] = useState<Verification | null>(null);
  const [changed, setChanged] = useState(false);
  const [deaf, setDeaf] = useState<string | null>(null);
  const took = useRef(0);

  const check = async (cancel: Cancel): Promise<boolean> => {
    const begun = Date.now();
    setFound(null);
    setChanged(false);
    const showing =
      (label: string) =>
      (part: number): void => {
        setWork({ label, part });
      };
    const workbook = await port.readWorkbook(showing(checkMessages.reading), cancel);
    const verification = await inSlices(verifyInSteps(workbook), showing(checkMessages.checking), cancel);
    setFound(verification);
    if (verification && verification.checked !== null) setListening(true);
    took.current = Date.now() - begun;
    return verification !== null;
  };
  const start = (): void => {
    action.run(check);
  };
  const latest = useRef({ start, busy: action.busy });
  latest.current = { start, busy: action.busy };

  const [listening, setListening] = useState(false);
  useEffect(() => {
    if (!listening) return undefined;
    let timer: ReturnType<typeof setTimeout> | undefined;
    let stop: (() => void) | null = null;
    let gone = false;
    const later = (): void => {
      clearTimeout(timer);
      timer = setTimeout(() => {
        if (latest.current.busy) later();
        else latest.current.start();
      }, rest);
    };
    port
      .onChange(() => {
        setChanged(true);
        if (took.current <= mostForAgain) later();
      })
      .then(
        (off) => {
          if (gone) off();
          else stop = off;
        },
        (error: unknown) => {
          setDeaf(plainMessage(error));
        },
      );
    return () => {
      gone = true;
      clearTimeout(timer);
      stop?.();
    };
  }, [port, listening]);

  return (
    <LongActionPart
      action={action}
      words={{ button: checkMessages.check, hint: checkMessages.hint, cancel: checkMessages.cancel }}
      work={work}
      start={start}
    >
      {deaf !== null && <Notice tone="warning">{deaf}</Notice>}
      {found && changed && <Notice tone="outdated">{checkMessages.changed}</Notice>}
      {found && !changed && <CheckOutcome found={found} stale={stale} />}
    </LongActionPart>
  );
}

/** What a check of the result sheets found. */
function CheckOutcome({ found, stale }: CheckOutcomeProps): JSX.Element {
  const { checked, inputs, policy, results, older, without } = found;
  if (!checked && stale) return <Notice tone="problem">{checkMessages.changedUnwritten}</Notice>;
  if (!checked) {
    return (
      <Notice tone="note">
        {without.length === 0 ? (
          checkMessages.nothing
        ) : (
          <>
            {checkMessages.without} <Said text={without.join(', ')} />
          </>
        )}
      </Notice>
    );
  }
  const clean = isClean(found);
  return (
    <Notice tone={clean ? 'done' : 'problem'}>
      <Said text={runWords(checked)} />. {clean ? checkMessages.clean : checkMessages.edited}
      <ul>
        <CheckedPart part="inputs" check={inputs} />
        <CheckedPart part="policy" check={policy} />
        <CheckedPart part="results" check={results} />
      </ul>
      {older.length > 0 && (
        <p>
          {checkMessages.older}: <Said text={older.map(runWords).join('; ')} />
        </p>
      )}
      <p class="quiet">{coverageWithoutFile}</p>
    </Notice>
  );
}

/** What became of the inputs, the policy or the results, with links to the cells that differ. */
function CheckedPart({ part, check: { state, said, cells, more } }: CheckedPartProps): JSX.Element {
  return (
    <li>
      {checkMessages.parts[part]}: <strong>{stateWords[state]}</strong>
      {said.map((text) => (
        <p key={text}>
          <Said text={text} most={600} />
        </p>
      ))}
      {cells.length > 0 && (
        <ul>
          {cells.map(({ sheet, row, column, stands, should }) => (
            <li key={`${sheet} ${column}${row}`}>
              <CellLink sheet={sheet} row={row} column={column} />: <Value text={stands} />,{' '}
              {checkMessages.should[part]} <Value text={should} />
            </li>
          ))}
        </ul>
      )}
      {more > 0 && <p>{checkMessages.more(more)}</p>}
    </li>
  );
}

function Value({ text }: { text: string }): JSX.Element {
  return text === '' ? <span class="quiet">{checkMessages.empty}</span> : <Said text={text} most={60} />;
}

/** An audit for people: its id and its time. */
function runWords({ id, generated }: AuditRun): string {
  return generated === '' ? `Audit ${id}` : `Audit ${id}, ${clockTime(generated)}`;
}
