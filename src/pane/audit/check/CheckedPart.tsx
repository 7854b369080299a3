import type { JSX } from 'preact';
import type { PartCheck } from '../../../evidence/verification.ts';
import { CellLink } from '../../parts/CellLink.tsx';
import { Said } from '../../parts/Said.tsx';
import { checkWords, stateWords } from './checkWords.ts';

interface CheckedPartProps {
  readonly part: keyof typeof checkWords.parts;
  readonly check: PartCheck;
}

/** What became of the inputs, the policy or the results, with links to the cells that differ. */
export function CheckedPart({ part, check: { state, said, cells, more } }: CheckedPartProps): JSX.Element {
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
