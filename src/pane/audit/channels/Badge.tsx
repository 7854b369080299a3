import type { ThresholdVerdict } from '../../../audit/model/threshold.ts';
import type { JSX } from 'preact';
import { verdictMarks, verdictNames } from '../auditWords.ts';

/** A verdict as a word with a shape, so that its colour says nothing by itself. */
export function Badge({ verdict }: { verdict: ThresholdVerdict }): JSX.Element {
  return (
    <span class={`badge verdict-${verdict}`}>
      <span aria-hidden="true">{verdictMarks[verdict]}</span> {verdictNames[verdict]}
    </span>
  );
}
