import type { JSX } from 'preact';
import type { GroupResult } from '../../../audit/model/report.ts';
import { amount } from '../../../audit/model/wording.ts';
import { groupSentence } from '../../../sheets/summary/sentence.ts';
import { Said } from '../../parts/Said.tsx';
import { auditWords } from '../auditWords.ts';
import { FindingList } from './FindingList.tsx';

const shownAtOnce = 200;

/** Voting groups: where each is meant to act, where it does, and which channel decides; those in trouble first. */
export function Groups({ groups }: { groups: readonly GroupResult[] }): JSX.Element {
  const trouble = (group: GroupResult): number => (group.canTrip ? (group.findings.length > 0 ? 1 : 2) : 0);
  const ordered = groups.toSorted((a, b) => trouble(a) - trouble(b));
  return (
    <details class="part">
      <summary>
        {auditWords.groups} <span class="quiet">{groups.length}</span>
      </summary>
      <ul class="plain-list">
        {ordered.slice(0, shownAtOnce).map((group) => (
          <li key={`${group.name} ${group.threshold}`}>
            <GroupLine group={group} />
          </li>
        ))}
      </ul>
      {groups.length > shownAtOnce && (
        <p class="quiet">The other {groups.length - shownAtOnce} stand on the result sheets.</p>
      )}
    </details>
  );
}

function GroupLine({ group }: { group: GroupResult }): JSX.Element {
  const { name, voting, threshold, intended, effective, unit, decidedBy, canTrip, findings } = group;
  const level = (value: number): string => amount(value, unit ?? '');
  const set = intended === null ? 'setpoint not known' : `set for ${level(intended)}`;
  const acts =
    effective === null ? (canTrip ? 'effect not known' : 'cannot act') : `acts at ${level(effective)}`;
  return (
    <>
      <b>
        <Said text={name} most={60} />
      </b>{' '}
      {voting}, {threshold}: {set}, {acts}
      {decidedBy.length > 0 && (
        <>
          , {auditWords.decidedBy} <Said text={decidedBy.join(', ')} most={120} />
        </>
      )}
      .
      {!canTrip && findings.length === 0 && (
        <p>
          <Said text={groupSentence(group)} />
        </p>
      )}
      {findings.length > 0 && <FindingList findings={findings} none="" />}
    </>
  );
}
