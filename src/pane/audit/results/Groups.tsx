import { group as grouped } from 'd3-array';
import type { JSX } from 'preact';
import { machineSentences } from '../../../audit/advise/machineSentences.ts';
import type { Attention, GroupResult, MachineChance } from '../../../audit/model/report.ts';
import { Fold } from '../../parts/Fold.tsx';
import { LongList } from '../../parts/LongList.tsx';
import { Said } from '../../parts/Said.tsx';
import { auditWords } from '../auditWords.ts';
import type { BySubject } from './bySubject.ts';
import { FindingList } from './FindingList.tsx';
import { foundText, groupText } from './groupText.ts';

interface GroupsProps {
  readonly groups: readonly GroupResult[];
  readonly machines: readonly MachineChance[];
  readonly subjects: BySubject;
}

/** Voting groups by machine: where each is meant to act, where it really does, and which channel decides; worst first. */
export function Groups({ groups, machines, subjects }: GroupsProps): JSX.Element {
  const byMachine = grouped(
    groups.toSorted((one, other) => subjects.placeOfGroup(one) - subjects.placeOfGroup(other)),
    ({ machine }) => machine,
  );
  return (
    <Fold
      part
      title={
        <>
          {auditWords.groups} <span class="quiet">{groups.length}</span>
        </>
      }
    >
      {[...byMachine].map(([machine, own]) => (
        <section key={machine}>
          <h4>{machine === '' ? auditWords.noMachine : <Said text={machine} most={60} />}</h4>
          {machines
            .filter((one) => one.machine === machine)
            .flatMap(machineSentences)
            .map((sentence) => (
              <p key={sentence}>
                <Said text={sentence} most={500} />
              </p>
            ))}
          <LongList
            entries={own}
            more={auditWords.more}
            line={(group, index) => (
              <li key={index}>
                <GroupLine group={group} attention={subjects.ofGroup(group)} />
              </li>
            )}
          />
        </section>
      ))}
    </Fold>
  );
}

function GroupLine({
  group,
  attention,
}: {
  group: GroupResult;
  attention: readonly Attention[];
}): JSX.Element {
  const { name, decidedBy, findings } = group;
  const found = foundText(group);
  return (
    <>
      <b>
        <Said text={name} most={60} />
      </b>{' '}
      {groupText(group)}
      {decidedBy.length > 0 && (
        <>
          , {auditWords.decidedBy} <Said text={decidedBy.join(', ')} most={120} />
        </>
      )}
      .{found !== null && <span class="block quiet">{found}.</span>}
      {attention.map(({ code, doNext }) => (
        <span key={code} class="block">
          <Said text={doNext} most={300} />
        </span>
      ))}
      {findings.length > 0 && <FindingList findings={findings} none="" />}
    </>
  );
}
