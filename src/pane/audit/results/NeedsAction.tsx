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

/** The gravest first, as the headline of the audit, and below it the whole list of what needs action. */
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
      <div class={`headline headline-${first.severity}`} role="status">
        <p class="headline-said">
          <Said text={first.headline} most={600} />
        </p>
        <p>
          <Said text={first.doNext} most={600} />
        </p>
      </div>
      <h3>
        {auditWords.needsAction}{' '}
        <span class="quiet">{auditWords.counted(critical, attention.length - critical)}</span>
      </h3>
      <AttentionList attention={attention} />
    </>
  );
}

interface AttentionListProps {
  readonly attention: readonly Attention[];
  /** All of them are about the one channel that is shown. */
  readonly ofOne?: boolean;
}

/** Entries of the list of what needs action: what is wrong, what to do, and where it stands in the workbook. */
export function AttentionList({ attention, ofOne = false }: AttentionListProps): JSX.Element {
  return (
    <LongList
      entries={attention}
      first={shownFirst}
      more={auditWords.more}
      line={({ severity, code, subject, headline, doNext, places: [place] }, index) => (
        <li key={index} class={`attention severity-${severity}`} data-code={code}>
          <b>{severityNames[severity]}</b>{' '}
          {!ofOne && subject.machine !== '' && (
            <span class="quiet">
              <Said text={subject.machine} most={60} />
            </span>
          )}
          {!ofOne && place && <CellLink {...place} />}
          <span class="block">
            <Said text={headline} most={600} />
          </span>
          <span class="block quiet">
            <Said text={doNext} most={600} />
          </span>
        </li>
      )}
    />
  );
}
