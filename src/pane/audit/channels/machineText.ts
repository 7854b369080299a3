import { trips } from '../../../audit/model/threshold.ts';
import { listedUpTo } from '../../../audit/model/wording.ts';
import type { Machine } from '../../../sheets/machines.ts';
import { shownText } from '../../parts/shownText.ts';
import { standings, standingWords } from './standing.ts';

/** How many of a machine's channels stand how, worst first: `4 late, 2 not known, 1 OK`. */
export function countsText({ summary }: Machine): string {
  const counts = standings.flatMap((standing) => {
    const count = standing === 'in bypass' ? summary.inBypass : summary[standing];
    return count === 0 ? [] : [`${count} ${standingWords[standing]}`];
  });
  return counts.join(', ');
}

/** What still trips a machine that runs: how many of its votes do, which cannot, how many act late. */
export function tripText({ groups }: Machine): string {
  const votes = groups.filter(({ threshold, multiplier }) => trips(threshold) && multiplier === 1);
  if (votes.length === 0) return 'No voting group';
  const idle = votes.filter(({ canTrip }) => !canTrip);
  const late = votes.filter(({ canTrip, late: isLate, beyondLimit }) => canTrip && (isLate || beyondLimit));
  const names = [...new Set(idle.map(({ name }) => shownText(name, 40)))];
  const able =
    idle.length === 0
      ? votes.length === 1
        ? 'Its vote trips'
        : `All ${votes.length} votes trip`
      : `${votes.length - idle.length} of ${votes.length} votes trip`;
  return [
    `${able}${late.length > 0 ? `, ${late.length} late` : ''}`,
    ...(names.length > 0 ? [`cannot trip: ${listedUpTo(names, 2)}`] : []),
  ].join('; ');
}
