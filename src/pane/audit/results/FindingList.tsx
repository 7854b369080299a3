import type { Finding } from '../../../audit/model/findings.ts';
import type { JSX } from 'preact';
import { CellLink } from '../../parts/CellLink.tsx';
import { LongList } from '../../parts/LongList.tsx';
import { Said } from '../../parts/Said.tsx';
import { auditMessages, severityNames } from '../auditMessages.ts';

/** Findings or problems with the cell of each. */
export function FindingList({ findings, none }: { findings: readonly Finding[]; none: string }): JSX.Element {
  if (findings.length === 0) return <p class="quiet">{none}</p>;
  return (
    <LongList
      entries={findings}
      more={auditMessages.more}
      line={({ rule, severity, message, sheet, row, column }, index) => (
        <li key={index} class={`severity-${severity}`} title={rule}>
          <b>{severityNames[severity]}</b> <CellLink sheet={sheet} row={row} column={column} />{' '}
          <Said text={message} />
        </li>
      )}
    />
  );
}
