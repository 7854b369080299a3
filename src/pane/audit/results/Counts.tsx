import { verdicts, type ThresholdVerdict } from '../../../audit/model/threshold.ts';
import type { JSX } from 'preact';
import { type Summary } from '../../../audit/model/report.ts';
import { auditWords, verdictMarks, verdictNames } from '../auditWords.ts';

interface CountsProps {
  readonly summary: Summary;
  readonly verdict: ThresholdVerdict | null;
  readonly onVerdict: (verdict: ThresholdVerdict | null) => void;
}

/** Channels by verdict; each count is also the filter of the list. */
export function Counts({ summary, verdict, onVerdict }: CountsProps): JSX.Element {
  const { channels, groupsThatCannotTrip } = summary;
  return (
    <>
      <div class="counts" role="group" aria-label={auditWords.list}>
        <button
          type="button"
          class="count"
          aria-pressed={verdict === null}
          onClick={() => {
            onVerdict(null);
          }}
        >
          <b>{channels}</b> {auditWords.all}
        </button>
        {verdicts.map((name) => (
          <button
            key={name}
            type="button"
            class={`count verdict-${name}`}
            aria-pressed={verdict === name}
            onClick={() => {
              onVerdict(verdict === name ? null : name);
            }}
          >
            <span aria-hidden="true">{verdictMarks[name]}</span> <b>{summary[name]}</b> {verdictNames[name]}
          </button>
        ))}
      </div>
      {groupsThatCannotTrip > 0 && (
        <p class="groups-idle">
          <b>{groupsThatCannotTrip}</b>{' '}
          {groupsThatCannotTrip === 1 ? 'voting group cannot trip.' : 'voting groups cannot trip.'}
        </p>
      )}
    </>
  );
}
