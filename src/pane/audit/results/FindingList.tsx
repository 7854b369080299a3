import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import type { Finding } from '../../../audit/report/types.ts';
import { CellLink } from '../../parts/CellLink.tsx';
import { Said } from '../../parts/Said.tsx';
import { auditWords, severityNames } from '../auditWords.ts';

const atOnce = 50;

/** Findings or problems with the cell of each; a long list shows its next part when asked. */
export function FindingList({ findings, none }: { findings: readonly Finding[]; none: string }): JSX.Element {
  const [most, setMost] = useState(atOnce);
  if (findings.length === 0) return <p class="quiet">{none}</p>;
  const rest = findings.length - most;
  return (
    <>
      <ul class="findings">
        {findings.slice(0, most).map(({ rule, severity, message, sheet, row, column }, index) => (
          <li key={index} class={`severity-${severity}`} title={rule}>
            <b>{severityNames[severity]}</b> <CellLink sheet={sheet} row={row} column={column} />{' '}
            <Said text={message} />
          </li>
        ))}
      </ul>
      {rest > 0 && (
        <button
          type="button"
          class="button"
          onClick={() => {
            setMost(most + atOnce);
          }}
        >
          {auditWords.more(Math.min(rest, atOnce))}
        </button>
      )}
    </>
  );
}
