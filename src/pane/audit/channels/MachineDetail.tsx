import type { JSX } from 'preact';
import { correctFirstLine, machineSentences } from '../../../audit/advise/machineSentences.ts';
import type { MachineChance } from '../../../audit/model/report.ts';
import { machineName, type Machine } from '../../../sheets/machines.ts';
import { standing } from '../../../sheets/handover/answer.ts';
import { tripLines } from '../../../sheets/handover/tripLines.ts';
import { Said } from '../../parts/Said.tsx';
import { auditMessages } from '../auditMessages.ts';
import { AttentionList } from '../results/NeedsAction.tsx';

interface MachineDetailProps {
  readonly machine: Machine;
  /** Nothing of the workbook was left unread. */
  readonly wholeRead: boolean;
  /** What of it may be late, by the uncertainties; without, none is known. */
  readonly chance: MachineChance | undefined;
}

/** One machine as it stands now: the answer, what still trips it, what to correct first, what to do about its votes. */
export function MachineDetail({ machine, wholeRead, chance }: MachineDetailProps): JSX.Element {
  const ofVotes = machine.attention.filter(({ subject }) => subject.group !== null);
  return (
    <article class="channel-detail" aria-label={auditMessages.machine}>
      <h3>
        <Said text={machineName(machine)} most={80} />
      </h3>
      <p>
        <Said text={standing(machine, wholeRead)} most={700} />
      </p>
      <h4>{auditMessages.stillTrips}</h4>
      <ul class="plain-list">
        {tripLines(machine).map(({ sign, shade, words }) => (
          <li key={words}>
            {sign !== '' && <b class={`verdict-${shade}`}>{sign}</b>} <Said text={words} />
          </li>
        ))}
      </ul>
      {chance && correctFirstLine(chance) !== null && (
        <>
          <h4>{auditMessages.correctFirst}</h4>
          {machineSentences(chance).map((sentence) => (
            <p key={sentence}>
              <Said text={sentence} most={500} />
            </p>
          ))}
        </>
      )}
      {ofVotes.length > 0 && (
        <>
          <h4>{auditMessages.next}</h4>
          <AttentionList attention={ofVotes} ofMachine />
        </>
      )}
    </article>
  );
}
