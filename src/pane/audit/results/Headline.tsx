import type { ComponentChildren, JSX } from 'preact';
import type { Report } from '../../../audit/model/report.ts';
import { Notice } from '../../parts/Notice.tsx';
import { auditMessages, clockTime, timeOfDay } from '../auditMessages.ts';
import { Entry } from './NeedsAction.tsx';

interface HeadlineProps {
  readonly report: Report;
  /** Why the results are out of date; empty where they are not. */
  readonly outOfDate: readonly string[];
  /** Audits again; `null` while an audit is under way. */
  readonly onAgain: (() => void) | null;
  /** Brings the keyboard to the list. */
  readonly onList: () => void;
  /** How far the next audit is. */
  readonly children: ComponentChildren;
}

/** The answer: the gravest thing that needs action, how many there are, and whether that still holds. */
export function Headline({ report, outOfDate, onAgain, onList, children }: HeadlineProps): JSX.Element {
  const old = outOfDate.length > 0;
  return (
    <section aria-label={auditMessages.results}>
      <div class="outcome-row">
        <h2 class="outcome" tabIndex={-1}>
          {auditMessages.results}
        </h2>
        <span class="quiet">
          {auditMessages.resultFrom}{' '}
          <time dateTime={report.generated} title={clockTime(report.generated)}>
            {timeOfDay(report.generated)}
          </time>
        </span>
        <button type="button" class="skip" onClick={onList}>
          {auditMessages.toList}
        </button>
        {onAgain && (
          <button type="button" class={old ? 'button button-first' : 'button'} onClick={onAgain}>
            {auditMessages.runAgain}
          </button>
        )}
      </div>
      {children}
      {outOfDate.map((text) => (
        <Notice key={text} tone="outdated">
          {text}
        </Notice>
      ))}
      <Answer report={report} />
    </section>
  );
}

function Answer({
  report: { attention, notRead, channels, summary },
}: {
  report: Report;
}): JSX.Element | null {
  const [first] = attention;
  if (!first) {
    return notRead.length === 0 && channels.length > 0 ? (
      <Notice tone="done">{auditMessages.allWell}</Notice>
    ) : null;
  }
  return (
    <>
      <div class={`headline headline-${first.severity} severity-${first.severity}`}>
        <Entry entry={first} />
      </div>
      <p class="tally">
        <b>{auditMessages.counted(summary.critical, summary.warnings)}</b>{' '}
        <span class="quiet">{auditMessages.ofChannels(channels.length)}.</span>{' '}
        {summary.groupsThatCannotTrip > 0 && (
          <span class="groups-idle">{auditMessages.idleVotes(summary.groupsThatCannotTrip)}</span>
        )}
      </p>
    </>
  );
}
