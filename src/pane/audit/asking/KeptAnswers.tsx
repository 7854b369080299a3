import type { JSX } from 'preact';
import type { ColumnMap } from '../../../audit/model/columnMap.ts';
import { Fold } from '../../parts/Fold.tsx';
import { Said } from '../../parts/Said.tsx';
import { hasAnswers, keptAnswers } from './answers.ts';
import { askingMessages } from './askingMessages.ts';

/** What was answered about this workbook, list by list, and the button that forgets it. */
export function KeptAnswers({ map, onForget }: { map: ColumnMap; onForget: () => void }): JSX.Element | null {
  if (!hasAnswers(map)) return null;
  return (
    <Fold part title={askingMessages.kept}>
      <p class="quiet">{askingMessages.keptHint}</p>
      <ul class="plain-list">
        {keptAnswers(map).map(({ about, names }) => (
          <li key={about}>
            <Said text={about} most={80} />
            {names.length > 0 && (
              <span class="quiet block">
                <Said text={names.join(', ')} most={300} />
              </span>
            )}
          </li>
        ))}
      </ul>
      <button type="button" class="button" onClick={onForget}>
        {askingMessages.forget}
      </button>
    </Fold>
  );
}
