import type { Standing } from '../audit/channels/standing.ts';

/** Texts of the help beside things. */
export const helpMessages = {
  about: (what: string) => `What does this mean: ${what}`,
  standings: 'the verdicts',
} as const;

/** What each verdict means, in a sentence. */
export const standingHelp: Readonly<Record<Standing, string>> = {
  unreachable: 'However far the shaft moves, this threshold never acts.',
  late: 'It acts only after the shaft has moved farther than the setpoint, by more than the tolerance.',
  undetermined: 'The measurement is too uncertain to say whether it acts in time.',
  early: 'It acts before the shaft has moved as far as the setpoint, by more than the tolerance.',
  incomplete: 'A number is missing or cannot be used, so nothing can be said.',
  within: 'It acts where it is set, within the tolerance.',
  'in bypass': 'The channel is switched out: it alarms and trips nothing.',
};
