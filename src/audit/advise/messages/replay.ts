import type { FactOf } from '../../model/findings.ts';
import type { NotReplayed, ReplayRules, TrendRowFault } from '../../model/rules/replayRules.ts';
import { amount, clockOf, dayOf, duration, listedUpTo } from '../../model/wording.ts';

type Sentences = { readonly [K in keyof ReplayRules]: (fact: FactOf<K>) => string };

/** What is said of recorded readings. */
export const replayMessages: Sentences = {
  'trend-rows-left-out': ({ values }) =>
    `${rowsOf(values)}${quoted(values.text)} ${rowFaults[values.fault]}; ${values.count === 1 ? 'this row was' : 'these rows were'} left out.`,
  'trend-readings-unknown': ({ values }) =>
    `${rowsOf(values)}${quoted(values.text)} ${values.fault === 'no number' ? 'is no number' : 'is no good quality'}; ${values.count === 1 ? 'this reading counts' : 'these readings count'} as unknown.`,
  'trend-columns-not-read': ({ values: { names } }) =>
    `${names.length === 1 ? 'A tag' : `${names.length} tags`} of the recorded readings (${listedUpTo(names, 8)}) ${names.length === 1 ? 'matches' : 'match'} no channel and ${names.length === 1 ? 'was' : 'were'} not read. Write tags as the channel list does.`,
  'trend-unit-assumed': ({ values: { names } }) =>
    `The recorded readings of ${listedUpTo(names, 8)} name no unit; they were taken in the unit of the setpoints.`,
  'not-replayed': ({ values }) => notReplayed(values),
  'replay-did-not-act': ({ values: { should, shouldActAt, setpoint, unit }, threshold }) =>
    `${threshold ?? ''} did not act on recorded readings: it should have acted at ${at(should)}, when the monitor showed ${amount(shouldActAt, unit)} for a real ${amount(setpoint, unit)}.`,
  'replay-acted-late': ({ values: { acted, should, late }, threshold }) =>
    `${threshold ?? ''} acted ${duration(late)} late on recorded readings: at ${at(acted, isFine(late))} instead of ${clockOf(should, isFine(late))}.`,
  'replay-not-proven': ({ values: { should }, threshold }) =>
    should === null
      ? `Recorded readings do not tell whether ${threshold ?? ''} acted: readings are missing, or the record ends, where it matters.`
      : `${threshold ?? ''} should have acted at ${at(should)}; whether it did, the recorded readings do not tell.`,
  'replay-acted-early': ({ values: { acted }, threshold }) =>
    `${threshold ?? ''} acted early on recorded readings, at ${at(acted)}.`,
};

/** Seconds below which tenths of them are told. */
function isFine(late: number): boolean {
  return Math.abs(late) < 60;
}

function at(time: string, fine: boolean = false): string {
  return `${clockOf(time, fine)} on ${dayOf(time)}`;
}

function rowsOf({ rows, count }: { readonly rows: readonly number[]; readonly count: number }): string {
  const more = count - rows.length;
  const named = more > 0 ? `${rows.join(', ')} and ${more} more` : listedUpTo(rows.map(String), rows.length);
  return `${count === 1 ? 'Row' : 'Rows'} ${named}: `;
}

function quoted(text: string): string {
  return text === '' ? 'the cell' : `'${text.slice(0, 60)}'`;
}

const rowFaults: Readonly<Record<TrendRowFault, string>> = {
  blank: 'has no time: enter it',
  'no time': 'is no date and time; write it like 2026-03-14 02:15:00',
  'no zone':
    'names no offset from UTC, and no zone is named: write it in the header of the times, such as Time (Europe/Berlin), or in the policy',
  'two different days': 'could be two different days; say in the policy whether day or month comes first',
  'no day of the calendar': 'is no day of the calendar: correct it',
  'does not exist': 'does not exist in its zone: the clock was put forward then; correct it',
  ambiguous:
    'stands in an hour that the clock showed twice, and the order of the rows does not tell which; name the offset',
  'no tag': 'names no tag: enter it',
};

function notReplayed(values: NotReplayed): string {
  switch (values.kind) {
    case 'no channel':
      return 'No tag of the recorded readings is one of the channel list, so nothing was replayed. Write tags as the channel list does.';
    case 'no reading':
      return 'The table of recorded readings has no reading that can be used, so nothing was replayed.';
    case 'no sensitivity':
      return `${values.tag} was not replayed: a sensitivity is missing. Complete its row.`;
    case 'no zero voltage':
      return `${values.tag} was not replayed: without both zero voltages and its direction it is not known what its readings really are. Enter them.`;
    case 'no day of the correction':
      return `${values.tag} was not replayed: it was measured again, and on which day is not said. Enter the date of the calibration.`;
    case 'no setpoint':
      return `${values.tag} was not replayed: it has no setpoint that can be used.`;
    case 'several machines':
      return `${values.tag} was not replayed: the tag stands on several machines. Name the machine in a column of its own.`;
    case 'unit':
      return `${values.tag} was not replayed: its readings in ${values.unit} can't be compared with setpoints in ${values.wanted === '' ? 'an unknown unit' : values.wanted}. Correct the unit.`;
    case 'too many out of order':
      return `More than ${values.most.toLocaleString('en-US')} readings of '${values.source.slice(0, 60)}' are out of order of time, too many to be sorted in memory; those channels were not replayed. Sort the file by time.`;
  }
}
