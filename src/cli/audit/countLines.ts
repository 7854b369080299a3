import type { Summary } from '../../audit/model/report.ts';
import { verdicts } from '../../audit/model/threshold.ts';
import { verdictWords } from '../../audit/model/verdictWords.ts';

/** How many channels act how, those in bypass and those that are not known apart; groups; what was corrected; what was not read. */
export function countLines(summary: Summary): string[] {
  const { channels, within, incomplete, inBypass, groupsThatCannotTrip, asLeft, corrected, notRead } =
    summary;
  const wrong = verdicts.filter((verdict) => verdict !== 'within' && verdict !== 'incomplete');
  const acting = [...wrong, 'within' as const].flatMap((verdict) =>
    summary[verdict] > 0 || verdict === 'within' ? [`${summary[verdict]} ${verdictWords[verdict]}`] : [],
  );
  const apart = [
    ...(incomplete > 0 ? [`${incomplete} ${verdictWords.incomplete}`] : []),
    ...(inBypass > 0 ? [`${inBypass} in bypass`] : []),
  ];
  if (channels === 0) return ['No channels.'];
  const all = channels === 1 ? '1 channel' : `${channels} channels`;
  return [
    within === channels
      ? `${all}, all OK.`
      : `${all}: ${acting.join(', ')}${apart.length > 0 ? `; ${apart.join(', ')}` : ''}.`,
    ...(groupsThatCannotTrip > 0
      ? [
          `${groupsThatCannotTrip === 1 ? '1 voting group' : `${groupsThatCannotTrip} voting groups`} cannot trip.`,
        ]
      : []),
    ...(notRead > 0 ? [`${notRead === 1 ? '1 thing was' : `${notRead} things were`} not read.`] : []),
    ...(asLeft > 0
      ? [
          `${asLeft === 1 ? '1 channel was' : `${asLeft} channels were`} measured again after a correction: ${corrected} corrected.`,
        ]
      : []),
  ];
}
