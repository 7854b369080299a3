import type { JSX } from 'preact';
import type { Attention } from '../../../audit/model/report.ts';
import { CellLink } from '../../parts/CellLink.tsx';
import { Fold } from '../../parts/Fold.tsx';
import { LongList } from '../../parts/LongList.tsx';
import { Said } from '../../parts/Said.tsx';
import { auditMessages, severityNames } from '../auditMessages.ts';

/** Entries shown before more are asked for, so that the list of channels is not far below. */
const shownFirst = 12;

interface NeedsActionProps {
  readonly attention: readonly Attention[];
  /** Something critical in it belongs to no machine of the list. */
  readonly beyondList: boolean;
}

/** All that needs action, gravest first, folded away below the list of channels. */
export function NeedsAction({ attention, beyondList }: NeedsActionProps): JSX.Element | null {
  if (attention.length === 0) return null;
  return (
    <Fold
      part
      needed={beyondList}
      title={
        <>
          {auditMessages.needsAction} <span class="quiet">{attention.length}</span>
        </>
      }
    >
      <AttentionList attention={attention} />
    </Fold>
  );
}

interface AttentionListProps {
  readonly attention: readonly Attention[];
  /** All of them are about the one channel that is shown. */
  readonly ofOne?: boolean;
  /** All of them are about the one machine that is shown. */
  readonly ofMachine?: boolean;
}

/** Entries of the list of what needs action. */
export function AttentionList({
  attention,
  ofOne = false,
  ofMachine = false,
}: AttentionListProps): JSX.Element {
  return (
    <LongList
      entries={attention}
      first={shownFirst}
      more={auditMessages.more}
      line={(entry, index) => (
        <li key={index} class={`severity-${entry.severity}`} data-code={entry.code}>
          <Entry entry={entry} ofOne={ofOne} ofMachine={ofMachine || ofOne} />
        </li>
      )}
    />
  );
}

interface EntryProps {
  readonly entry: Attention;
  readonly ofOne?: boolean;
  readonly ofMachine?: boolean;
}

/** What is wrong, what to do, and where it stands in the workbook. */
export function Entry({ entry, ofOne = false, ofMachine = false }: EntryProps): JSX.Element {
  const {
    severity,
    subject,
    headline,
    doNext,
    places: [place],
  } = entry;
  return (
    <>
      <b>{severityNames[severity]}</b>
      {!ofMachine && subject.machine !== '' && (
        <span class="quiet">
          {' '}
          <Said text={subject.machine} most={60} />
        </span>
      )}
      {!ofOne && place && (
        <>
          {' '}
          <CellLink {...place} />
        </>
      )}
      <span class="block said-first">
        <Said text={headline} most={600} />
      </span>
      <span class="block quiet">
        <Said text={doNext} most={600} />
      </span>
    </>
  );
}
