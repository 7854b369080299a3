import type { JSX } from 'preact';
import { coverageWithoutFile, isClean, type Verification } from '../../../evidence/verification.ts';
import { Notice } from '../../parts/Notice.tsx';
import { Said } from '../../parts/Said.tsx';
import { CheckedPart } from './CheckedPart.tsx';
import { checkWords, runWords } from './checkWords.ts';

/** What a check of the result sheets found. */
export function CheckOutcome({ found }: { found: Verification }): JSX.Element {
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
