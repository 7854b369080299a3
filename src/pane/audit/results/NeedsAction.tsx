import type { JSX } from 'preact';
import type { Attention, Report } from '../../../audit/model/report.ts';
import { CellLink } from '../../parts/CellLink.tsx';
import { LongList } from '../../parts/LongList.tsx';
import { Notice } from '../../parts/Notice.tsx';
import { Said } from '../../parts/Said.tsx';
import { auditWords, severityNames } from '../auditWords.ts';

/** Entries shown before more are asked for, so that the list of channels is not far below. */
const shownFirst = 12;

type NeedsActionProps = Pick<Report, 'attention' | 'notRead' | 'channels'>;

/** The gravest as the headline of the audit, and below it the rest of what needs action. */
export function NeedsAction({ attention, notRead, channels }: NeedsActionProps): JSX.Element | null {
  const [first] = attention;
  if (!first) {
    return notRead.length === 0 && channels.length > 0 ? (
      <Notice tone="done">{auditWords.allWell}</Notice>
    ) : null;
  }
  const critical = attention.filter(({ severity }) => severity === 'critical').length;
  return (
    <>
      <h3>
        {auditWords.needsAction}{' '}
        <span class="quiet">{auditWords.counted(critical, attention.length - critical)}</span>
      </h3>
      <div class={`headline headline-${first.severity} severity-${first.severity}`} data-code={first.code}>
        <Entry entry={first} />
      </div>
      {attention.length > 1 && <AttentionList attention={attention.slice(1)} />}
    </>
  );
}

interface AttentionListProps {
  readonly attention: readonly Attention[];
  /** All of them are about the one channel that is shown. */
  readonly ofOne?: boolean;
}

/** Entries of the list of what needs action. */
export function AttentionList({ attention, ofOne = false }: AttentionListProps): JSX.Element {
  return (
    <LongList
      entries={attention}
      first={shownFirst}
      more={auditWords.more}
      line={(entry, index) => (
        <li key={index} class={`severity-${entry.severity}`} data-code={entry.code}>
          <Entry entry={entry} ofOne={ofOne} />
        </li>
      )}
    />
  );
}

/** What is wrong, what to do, and where it stands in the workbook. */
function Entry({ entry, ofOne = false }: { entry: Attention; ofOne?: boolean }): JSX.Element {
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
      {!ofOne && subject.machine !== '' && (
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
