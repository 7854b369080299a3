import type { JSX } from 'preact';
import { standings, standingWords, type Standing } from '../audit/channels/standing.ts';
import { Help } from './Help.tsx';
import { helpMessages, standingHelp } from './helpMessages.ts';
import { VerdictSketch } from './VerdictSketch.tsx';

/** What one verdict means, behind a question mark. */
export function StandingHelp({ standing }: { standing: Standing }): JSX.Element {
  return (
    <Help about={standingWords[standing]}>
      <Meaning standing={standing} />
    </Help>
  );
}

/** What all verdicts mean, behind one question mark. */
export function StandingsHelp(): JSX.Element {
  return (
    <Help about={helpMessages.standings}>
      {standings.map((standing) => (
        <span key={standing} class="help-entry">
          <b>{standingWords[standing]}</b> <Meaning standing={standing} />
        </span>
      ))}
    </Help>
  );
}

function Meaning({ standing }: { standing: Standing }): JSX.Element {
  return (
    <>
      {standingHelp[standing]}
      <span class="block">
        <VerdictSketch standing={standing} />
      </span>
    </>
  );
}
