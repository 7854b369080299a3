import { type LabelsArgument, series, seriesOrText } from '../declare/argument.ts';

/** Arguments that the functions of a group's members share: a row or column, one cell a member, or one cell for all. */
export const setpoints = seriesOrText(
  'setpoints',
  'positive',
  'Setpoints of the members as the monitor shows them, one beside each other; text is a member that cannot act.',
);
export const configured = series(
  'configured',
  'positive',
  'Sensitivities that the monitor is configured with, or one for all.',
);
export const measured = seriesOrText(
  'measured',
  'positive',
  'Sensitivities measured on the chains, in the unit of the configured ones; text is a member that cannot act.',
);
export const shared = series(
  'shared',
  'shareOrNone',
  'Relative standard uncertainty of each that its batch shares, such as 0.012, or one for all; 0 if nothing is shared.',
);
export const own = series(
  'own',
  'shareOrNone',
  'Relative standard uncertainty of each by itself, or one for all; with the shared one it makes up U/k.',
);
export const batches: LabelsArgument = {
  kind: 'labels',
  name: 'batches',
  otherwise: [],
  description:
    'What each was calibrated with or made from: the same name, a shared error; blank or left out, a batch of its own.',
};
