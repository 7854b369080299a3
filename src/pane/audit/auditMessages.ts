import type { ChannelState } from '../../audit/model/report.ts';
import type { Severity } from '../../audit/model/findings.ts';

/** Texts of the audit view, but for its questions and policy. */
export const auditMessages = {
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
  stale: 'The workbook was changed since this audit.',
  unsettled: 'Answers or policy were changed after this audit. Run it again to use them.',
  results: 'Result',
  resultFrom: 'Audited',
  toList: 'Go to the list',
  needsAction: 'All that needs action',
  ofChannels: (count: number) => (count === 1 ? 'for 1 channel' : `for ${count} channels`),
  idleVotes: (count: number) =>
    count === 1 ? '1 voting group cannot trip.' : `${count} voting groups cannot trip.`,
  counted: (critical: number, warnings: number) =>
    `${critical} critical, ${warnings} ${warnings === 1 ? 'warning' : 'warnings'}`,
  allWell: 'All OK: nothing needs action, and nothing that looks like part of the audit was left unread.',
  nothingToDo: 'Nothing needs action.',
  list: 'Channels, worst first',
  machineList: 'Machines, worst first',
  filter: 'Show only channels that are',
  machine: 'Machine',
  stillTrips: 'What still trips it',
  correctFirst: 'What to correct first',
  further: 'Write, hand over, check',
  noThreshold: 'No setpoint is known',
  noPanel: 'No panel reading can be given',
  actsFirst: 'Early: it acts by itself first',
  measuredAgain: (count: number, corrected: number) =>
    `${count} ${count === 1 ? 'channel was' : 'channels were'} measured again; ${corrected} corrected.`,
  search: 'Search',
  searchHint: 'Tag, machine or location',
  all: 'All',
  nothingListed: 'No channel fits this filter and search.',
  answersLost: 'The answers kept in this workbook can’t be read and are left out. You are asked again.',
  policyLost: (why: string) => `The policy kept in this workbook can’t be used and is left out. ${why}`,
  notKept: 'This could not be kept in the workbook and holds only until the pane closes.',
  listed: (shown: number, all: number) => `${shown} of ${all} channels`,
  listHint: 'Arrow keys move, right and left open and close a machine, Enter chooses.',
  chooseOne: 'Choose a channel to see where it really trips and alarms. Its row is selected in the workbook.',
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
  decidedBy: 'set by',
  problems: 'Problems in the tables',
  more: (count: number) => `Show ${count} more`,
  resultSheets: {
    button: 'Write result sheets',
    hint: 'Adds the result sheets behind your own. Your sheets stay as they are.',
    under: 'Writing the result sheets',
  },
  handOverSheets: {
    button: 'Make hand-over sheets',
    hint: 'Adds for each machine a page for the control room and an annex: panel readings to use, what must be done before start-up.',
    under: 'Writing the hand-over sheets',
  },
  handOverOne: (machine: string) => ({
    button: `Make hand-over sheets for ${machine} alone`,
    hint: 'Adds the page for the control room and the annex of the machine chosen in the list.',
    under: 'Writing the hand-over sheets',
  }),
  chooseMachine: 'Choose a machine in the list to make those of one machine alone.',
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

/** The time of day of an audit as the user's own clock shows it. */
export function timeOfDay(iso: string): string {
  const time = new Date(iso);
  return Number.isNaN(time.getTime()) ? iso : time.toLocaleTimeString(undefined, { timeStyle: 'short' });
}

/** A time of the audit as the user's own clock shows it. */
export function clockTime(iso: string): string {
  const time = new Date(iso);
  return Number.isNaN(time.getTime())
    ? iso
    : time.toLocaleString(undefined, { dateStyle: 'medium', timeStyle: 'short' });
}
