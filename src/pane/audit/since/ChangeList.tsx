import type { Severity } from '../../../audit/model/findings.ts';
import type { JSX } from 'preact';
import {
  changeKinds,
  changeWords,
  type Change,
  type ChangeKind,
  type SinceResult,
} from '../../../audit/model/since.ts';
import { CellLink } from '../../parts/CellLink.tsx';
import { LongList, atOnce } from '../../parts/LongList.tsx';
import { Said } from '../../parts/Said.tsx';
import { sinceWords } from './sinceWords.ts';

/** Kinds of change that call for action at once, and those that must be looked at. */
const grave = new Set<ChangeKind>(['newly unreachable', 'newly late']);
const doubtful = new Set<ChangeKind>(['newly undetermined', 'newly incomplete', 'gone', 'not compared']);

/** What changed since an earlier audit, worst first. */
export function ChangeList({ since }: { since: SinceResult }): JSX.Element {
  const { changes, counts, remarks } = since;
  const told = changeKinds
    .filter((kind) => counts[kind] > 0)
    .map((kind) => `${counts[kind]} ${changeWords[kind]}`);
  return (
    <>
      <p role="status">{told.length === 0 ? sinceWords.nothing : `${told.join(', ')}.`}</p>
      <LongList
        entries={changes}
        more={sinceWords.more}
        line={(change, index) => <ChangeLine key={index} change={change} />}
      />
      {remarks.length > 0 && (
        <>
          <p class="quiet">{sinceWords.ofEarlier}</p>
          <ul class="findings">
            {remarks.slice(0, atOnce).map(({ sheet, row, column, message }, index) => (
              <li key={index}>
                {sheet !== '' && <CellLink sheet={sheet} row={row} column={column} />} <Said text={message} />
              </li>
            ))}
          </ul>
        </>
      )}
    </>
  );
}

function ChangeLine({ change }: { change: Change }): JSX.Element {
  const { kind, tag, message, source } = change;
  return (
    <li class={`severity-${severityOf(kind)}`}>
      <b>{changeWords[kind]}</b> <Said text={tag} most={60} />{' '}
      <CellLink sheet={source.sheet} row={source.row} column="A" /> <Said text={message} />
    </li>
  );
}

function severityOf(kind: ChangeKind): Severity {
  return grave.has(kind) ? 'critical' : doubtful.has(kind) ? 'warning' : 'note';
}
