import type { JSX } from 'preact';
import type { Summary } from '../../../audit/model/report.ts';
import { auditWords } from '../auditWords.ts';
import {
  standingClass,
  standings,
  standingSigns,
  standingWords,
  type Standing,
} from '../channels/standing.ts';

interface CountsProps {
  readonly summary: Summary;
  readonly standing: Standing | null;
  readonly onStanding: (standing: Standing | null) => void;
}

/** Channels by how they stand now, each count also the filter of the list; groups that cannot trip, corrected channels. */
export function Counts({ summary, standing, onStanding }: CountsProps): JSX.Element {
  const { channels, inBypass, groupsThatCannotTrip, asLeft, corrected } = summary;
  return (
    <>
      <div class="counts" role="group" aria-label={auditWords.list}>
        <button
          type="button"
          class="count"
          aria-pressed={standing === null}
          onClick={() => {
            onStanding(null);
          }}
        >
          <b>{channels}</b> {auditWords.all}
        </button>
        {standings.map((one) => (
          <button
            key={one}
            type="button"
            class={`count ${standingClass(one)}`}
            aria-pressed={standing === one}
            onClick={() => {
              onStanding(standing === one ? null : one);
            }}
          >
            <span aria-hidden="true">{standingSigns[one]}</span>{' '}
            <b>{one === 'in bypass' ? inBypass : summary[one]}</b> {standingWords[one]}
          </button>
        ))}
      </div>
      {groupsThatCannotTrip > 0 && (
        <p class="groups-idle">
          <b>{groupsThatCannotTrip}</b>{' '}
          {groupsThatCannotTrip === 1 ? 'voting group cannot trip.' : 'voting groups cannot trip.'}
        </p>
      )}
      {asLeft > 0 && <p class="quiet">{auditWords.measuredAgain(asLeft, corrected)}</p>}
    </>
  );
}
