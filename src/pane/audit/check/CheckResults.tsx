import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
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
import { LongDeedPart } from '../../parts/LongDeedPart.tsx';
import { useLongDeed } from '../../parts/useLongDeed.ts';
import { inSlices } from '../run/inSlices.ts';
import { Notice } from '../../parts/Notice.tsx';
import { Said } from '../../parts/Said.tsx';
import { CellLink } from '../../parts/CellLink.tsx';
import { clockTime } from '../auditWords.ts';

/** Texts of the check of result sheets. */
const checkWords = {
  check: 'Check results',
  hint: 'Tells whether inputs, policy or results were edited since the newest result sheets were written.',
  reading: 'Reading the workbook',
  checking: 'Checking the results',
  cancel: 'Cancel',
  cancelled: 'Cancelled. Nothing was checked.',
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
  readonly part: keyof typeof checkWords.parts;
  readonly check: PartCheck;
}

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

/** What a check of the result sheets found. */
function CheckOutcome({ found }: { found: Verification }): JSX.Element {
  const { checked, inputs, policy, results, older, without } = found;
  if (!checked) {
    return (
      <Notice tone="note">
        {without.length === 0 ? (
          checkWords.nothing
        ) : (
          <>
            {checkWords.without} <Said text={without.join(', ')} />
          </>
        )}
      </Notice>
    );
  }
  const clean = isClean(found);
  return (
    <Notice tone={clean ? 'done' : 'problem'}>
      <Said text={runWords(checked)} />. {clean ? checkWords.clean : checkWords.edited}
      <ul>
        <CheckedPart part="inputs" check={inputs} />
        <CheckedPart part="policy" check={policy} />
        <CheckedPart part="results" check={results} />
      </ul>
      {older.length > 0 && (
        <p>
          {checkWords.older}: <Said text={older.map(runWords).join('; ')} />
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
      {checkWords.parts[part]}: <strong>{stateWords[state]}</strong>
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
              {checkWords.should[part]} <Value text={should} />
            </li>
          ))}
        </ul>
      )}
      {more > 0 && <p>{checkWords.more(more)}</p>}
    </li>
  );
}

function Value({ text }: { text: string }): JSX.Element {
  return text === '' ? <span class="quiet">{checkWords.empty}</span> : <Said text={text} most={60} />;
}

/** An audit for people: its id and its time. */
function runWords({ id, generated }: AuditRun): string {
  return generated === '' ? `Audit ${id}` : `Audit ${id}, ${clockTime(generated)}`;
}
