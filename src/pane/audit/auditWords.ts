import type { ChannelState } from '../../audit/model/report.ts';
import type { Severity } from '../../audit/model/findings.ts';

/** Texts of the audit view, but for its questions and policy. */
export const auditWords = {
  title: 'Audit this workbook',
  intro: 'Reads the lists of this workbook, and asks where a column is not clear. No cell is changed.',
  run: 'Run audit',
  runAgain: 'Run audit again',
  show: 'Show what is understood',
  cancel: 'Cancel',
  steps: {
    reading: 'Reading the workbook',
    understanding: 'Reading what its columns mean',
    auditing: 'Auditing',
  },
  cancelled: 'Cancelled. Nothing was changed.',
  stale: 'The workbook changed since this audit. Results below are out of date.',
  unsettled: 'Answers or policy were changed after this audit. Run it again to use them.',
  results: 'Result',
  resultFrom: (version: string) => `Rules version ${version}, audited`,
  needsAction: 'Needs action',
  counted: (critical: number, warnings: number) =>
    `${critical} critical, ${warnings} ${warnings === 1 ? 'warning' : 'warnings'}`,
  allWell: 'All OK: nothing needs action, and nothing that looks like part of the audit was left unread.',
  nothingToDo: 'Nothing needs action.',
  list: 'Channels, worst first',
  noThreshold: 'No setpoint is known',
  noPanel: 'No panel reading can be given',
  measuredAgain: (count: number, corrected: number) =>
    `${count} ${count === 1 ? 'channel was' : 'channels were'} measured again; ${corrected} corrected.`,
  search: 'Search tag, machine or location',
  all: 'All',
  nothingListed: 'No channel fits this filter and search.',
  answersLost: 'The answers kept in this workbook can’t be read and are left out. You are asked again.',
  policyLost: (why: string) => `The policy kept in this workbook can’t be used and is left out. ${why}`,
  notKept: 'This could not be kept in the workbook and holds only until the pane closes.',
  listed: (shown: number, all: number) => `${shown} of ${all} channels`,
  listHint: 'Arrow keys move, Enter chooses. Choosing selects the row in the workbook.',
  chooseOne: 'Choose a channel to see where it really trips and alarms.',
  next: 'What to do',
  findings: 'Findings',
  noFindings: 'No findings.',
  thresholds: 'Thresholds',
  thresholdsNow: (state: ChannelState) => `Thresholds now, ${state}`,
  wasFound: 'As it was found',
  rows: 'In the workbook',
  channelRow: 'channel list',
  settingsRow: 'monitor settings',
  groups: 'Voting groups',
  noMachine: 'No machine named',
  decidedBy: 'decided by',
  problems: 'Problems in the tables',
  more: (count: number) => `Show ${count} more`,
  resultSheets: {
    button: 'Write result sheets',
    hint: 'Adds the result sheets behind your own. Your sheets stay as they are.',
    under: 'Writing the result sheets',
  },
  handOverOf: 'Hand-over sheets for',
  everyMachine: 'every machine, worst first',
  handOverSheets: {
    button: 'Make hand-over sheets',
    hint: 'Adds for each machine a page for the control room and an annex: panel readings to use, what must be done before start-up.',
    under: 'Writing the hand-over sheets',
  },
  tidySheets: {
    button: 'Bring your list into the standard shape',
    hint: 'Adds your list as two tidy sheets whose cells are links to your own. Your sheets stay as they are.',
    under: 'Writing the tidy sheets',
  },
  replaceSheets: {
    button: 'Replace the earlier result sheets',
    hint: 'Writes the result sheets in place of those of earlier audits. Your sheets stay as they are.',
    under: 'Replacing the result sheets',
  },
  removeSheets: {
    button: 'Remove Tripdrift’s sheets',
    hint: 'Takes the result sheets away. Your sheets stay as they are.',
    under: 'Removing the result sheets',
  },
  editedSheets: 'Not as their audit wrote them:',
  referring: 'These cells of yours refer to result sheets and will show an error:',
  andMore: (count: number) => `and ${count} more`,
  goOn: 'Go on',
  leave: 'Leave them',
  noneThere: 'There is no result sheet in this workbook.',
  removed: 'Removed:',
  written: 'Written:',
  renamed: (wanted: string) => `, because there is a sheet “${wanted}” already`,
  noDrawing: 'No threshold of this channel can be drawn.',
} as const;

export const severityNames: Readonly<Record<Severity, string>> = {
  critical: 'Critical',
  warning: 'Warning',
  note: 'Note',
};

/** A time of the audit as the user's own clock shows it. */
export function clockTime(iso: string): string {
  const time = new Date(iso);
  return Number.isNaN(time.getTime())
    ? iso
    : time.toLocaleString(undefined, { dateStyle: 'medium', timeStyle: 'short' });
}
