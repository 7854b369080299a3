import type { FactOf } from '../../model/findings.ts';
import type { RunUpNotJudged, RunUpRowFault, RunUpRules } from '../../model/rules/runUpRules.ts';
import { timesAtStartUp } from '../../model/threshold.ts';
import { amount, rounded } from '../../model/wording.ts';
import { speedText } from '../runUpText.ts';

type Sentences = { readonly [K in keyof RunUpRules]: (fact: FactOf<K>) => string };

/** What is said of run-ups. */
export const runUpMessages: Sentences = {
  'run-up-row-left-out': ({ values: { fault, text } }) =>
    `${text === '' ? 'The cell' : `'${text.slice(0, 60)}'`} ${rowFaults[fault]}; this row was left out.`,
  'run-up-not-judged': ({ values }) => notJudged(values),
  'run-up-no-action': ({ values: { should, peak, peakSpeed, shownAtPeak, unit, multiplier }, threshold }) =>
    `${threshold ?? ''}${timesAtStartUp(multiplier)} would not have acted on this run-up, though really ${amount(peak, unit)} at ${speedText(peakSpeed)} (shown as ${amount(shownAtPeak, unit)}); it should have acted at ${speedText(should)}.`,
  'run-up-late': ({ values: { acts, should, realAtTrip, unit, multiplier }, threshold }) =>
    `${threshold ?? ''}${timesAtStartUp(multiplier)} acts at ${speedText(acts)} on this run-up instead of ${speedText(should)}, by then really ${amount(realAtTrip, unit)}.`,
  'run-up-early': ({ values: { acts, multiplier }, threshold }) =>
    `${threshold ?? ''}${timesAtStartUp(multiplier)} acts early on this run-up, at ${speedText(acts)}.`,
  'late-at-running-speed': ({
    values: { setpoint, effective, unit, speed, sensitivity, sensitivityUnit },
    threshold,
  }) =>
    `At ${speedText(speed)} the sensitivity is ${rounded(sensitivity)} ${sensitivityUnit}: ${threshold ?? ''}, set ${amount(setpoint, unit)}, really acts at ${amount(effective, unit)} there. It holds for the component at running speed, not for an overall value.`,
};

const rowFaults: Readonly<Record<RunUpRowFault, string>> = {
  'no tag': 'names no tag: enter it',
  'no speed': 'is no speed: enter a number, in r/min or with its unit in the header',
  'no amplitude': 'is no amplitude: enter a number that is not negative',
  'no sensitivity': 'is no sensitivity: enter a number above 0',
  'no corner': 'is no corner frequency: enter a number above 0, in Hz or with its unit in the header',
  'no damping': 'is no damping ratio: enter a number above 0',
  'no measuring frequency':
    'is no measuring frequency: enter a number above 0, in Hz or with its unit in the header',
  'no multiplier speed': 'is no speed for the multiplier: enter a number above 0, or leave it blank',
  'no rate': 'is no run-up rate: enter a number above 0, in r/min a second, or leave it blank',
  'not as above': 'is not what an earlier row of this tag says: enter one of them alone',
};

function notJudged(values: RunUpNotJudged): string {
  const { tag } = values;
  switch (values.kind) {
    case 'real or indicated':
      return `The run-up of ${tag} does not say whether its amplitudes are real or indicated by the channel, so it was not judged. Write 'real amplitude' or 'indicated amplitude' in the header.`;
    case 'no channel':
      return `${tag} is no channel of the channel list, so nothing was judged of it. Write the tag as the list does.`;
    case 'several machines':
      return `${tag} stands on several machines, so its run-up was not judged. Name the machine in a column of its own.`;
    case 'no sensitivity':
      return `The run-up of ${tag} was not judged: a sensitivity is missing. Complete its row.`;
    case 'no setpoint':
      return `The run-up of ${tag} was not judged: it has no setpoint that can be used.`;
    case 'position':
      return `The run-up of ${tag} was not judged: it is a position, not a vibration.`;
    case 'beyond the record':
      return `The record of sensitivity against speed of ${tag} does not reach all speeds of its run-up; those beyond it were left out.`;
    case 'no measuring frequency':
      return `Corner and damping of ${tag} were not used: at which frequency its sensitivity was measured is not said. Enter it in a column 'measured at'.`;
    case 'unit':
      return `The values of ${tag} in ${values.unit === '' ? 'no unit' : values.unit} can't be compared with those in ${values.wanted}, so they were not used. Correct the unit.`;
  }
}
