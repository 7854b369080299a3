import type { ReplayedChannel, ReplayedThreshold } from '../model/replay.ts';
import { trips } from '../model/threshold.ts';
import { clockOf, dayOf, duration, level } from '../model/wording.ts';

/** What happened, the time first, and what to do. */
export function ofReplayed(
  { tag, unit, source }: ReplayedChannel,
  { name, setpoint, shouldActAt, acted, should, late, fromStart }: ReplayedThreshold,
): { readonly headline: string; readonly doNext: string } {
  const say = (value: number): string => `${level(value, null)}${unit === '' ? '' : ` ${unit}`}`;
  const due = should.proven;
  const then = acted.proven;
  const real = `a real ${say(setpoint)} showed as ${say(shouldActAt)}`;
  if (due && then && late !== null) {
    const fine = Math.abs(late) < 60;
    return {
      headline: `${tag} ${name} acted ${fromStart ? 'at least ' : ''}${duration(late)} late on ${dayOf(then.time)}: at ${clockOf(then.time, fine)} instead of ${clockOf(due.time, fine)}${fromStart ? ' or before' : ''}; ${real}.`,
      doNext: `Tell whoever investigates the event, and correct the chain. The readings stand in '${source}'.`,
    };
  }
  if (due && !acted.earliest)
    return {
      headline: `${tag} ${name} did not act on ${dayOf(due.time)}: it should have acted at ${clockOf(due.time)}; ${real}.`,
      doNext: trips(name)
        ? `Tell the machinery engineer responsible now, and correct the chain. The readings stand in '${source}'.`
        : `Correct the chain. The readings stand in '${source}'.`,
    };
  return {
    headline: `${tag} ${name} ${due ? `should have acted at ${clockOf(due.time)} on ${dayOf(due.time)}` : 'may have had to act'}; the readings do not tell whether it did.`,
    doNext: `Find the readings that are missing in '${source}', or the monitor's own list of events.`,
  };
}
