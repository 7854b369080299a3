import { group as grouped } from 'd3-array';
import type { JSX } from 'preact';
import { machineSentences } from '../../../audit/advise/machineSentences.ts';
import type { Attention, GroupResult, MachineChance } from '../../../audit/model/report.ts';
import { Fold } from '../../parts/Fold.tsx';
import { LongList } from '../../parts/LongList.tsx';
import { Said } from '../../parts/Said.tsx';
import { auditMessages } from '../auditMessages.ts';
import type { BySubject } from './bySubject.ts';
import { FindingList } from './FindingList.tsx';
import { timesAtStartUp, trips } from '../../../audit/model/threshold.ts';
import { level, verdictWords } from '../../../audit/model/wording.ts';
import { actsAs } from '../channels/thresholdText.ts';

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
          {auditMessages.groups} <span class="quiet">{groups.length}</span>
        </>
      }
    >
      {[...byMachine].map(([machine, own]) => (
        <section key={machine}>
          <h4>{machine === '' ? auditMessages.noMachine : <Said text={machine} most={60} />}</h4>
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
            more={auditMessages.more}
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
          , {auditMessages.decidedBy} <Said text={decidedBy.join(', ')} most={120} />
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

/** A threshold of a group in numbers: `2oo2, danger: set 5, really trips at 6.25 mil, late`. */
function groupText(group: GroupResult): string {
  const { voting, threshold, multiplier, intended, effective, canTrip, late, beyondLimit, limit } = group;
  const set = intended === null ? 'setpoint not known' : `set ${levelOf(group, intended)}`;
  const parts = [
    `${voting}, ${threshold}${timesAtStartUp(multiplier)}: ${set}`,
    reallyText(group, canTrip, effective),
    ...between(group),
    ...(late ? [verdictWords.late] : []),
    ...(beyondLimit && limit !== null ? [`beyond its limit of ${levelOf(group, limit)}`] : []),
  ];
  return parts.join(', ');
}

/** Between which levels it acts, as far as its measurements are uncertain. */
function between(group: GroupResult): string[] {
  const { low, high } = group.chance ?? { low: null, high: null };
  if (low === null || high === null) return [];
  const sign = group.threshold.startsWith('counter') ? -1 : 1;
  return [`acts between ${level(sign * low, null)} and ${levelOf(group, sign * high)}`];
}

/** How the group was found, where a member was measured again since. */
function foundText(group: GroupResult): string | null {
  const { asFound } = group;
  if (!asFound) return null;
  const by = asFound.decidedBy.length > 0 ? `, by ${asFound.decidedBy.join(', ')}` : '';
  return `As found: ${reallyText(group, asFound.canTrip, asFound.effective)}${by}`;
}

function reallyText(group: GroupResult, canTrip: boolean, effective: number | null): string {
  const { threshold, liveVoting, out } = group;
  if (liveVoting === 'tripped') return 'has tripped already: votes of members out count';
  const left = out.length > 0 && canTrip ? ` (${liveVoting} left)` : '';
  if (!canTrip) return trips(threshold) ? 'cannot trip' : 'cannot alarm';
  if (effective === null) return verdictWords.incomplete;
  return `really ${actsAs(threshold)} at ${levelOf(group, effective)}${left}`;
}

function levelOf({ unit }: GroupResult, value: number): string {
  return `${level(value, null)}${unit === null || unit === '' ? '' : ` ${unit}`}`;
}
