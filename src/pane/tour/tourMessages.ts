import type { ViewId } from '../app/views.ts';

/** Texts of the tour. */
export const tourMessages = {
  name: 'Tour',
  step: (at: number, of: number) => `${at} of ${of}.`,
  next: 'Next',
  skip: 'Skip the tour',
  done: 'Done',
} as const;

/** Its steps, each over the view that it speaks of. */
export const tourSteps: readonly { readonly view: ViewId; readonly text: string }[] = [
  {
    view: 'quick',
    text: 'One trip: select a row of your list and press “Take from selection”. You see where it really trips.',
  },
  {
    view: 'audit',
    text: 'All trips: press “Run audit”. It reads your lists, asks where a column is not clear, and changes no cell.',
  },
  {
    view: 'audit',
    text: 'Then the worst comes first. Open a machine, choose a channel, and write the sheets for the control room.',
  },
];
