import type { Attention, AttentionCode, Report } from '../../audit/model/report.ts';
import { attentionOfNoMachine, type Machine } from '../machines.ts';
import { listed } from './paper.ts';
import { withoutRepeatedAlerts, onlyWarns } from './withoutRepeatedAlerts.ts';

/** How many names a sentence of the answer holds. */
const mostNames = 5;
/** How many readings that are past their level are told in full. */
const mostReadings = 2;

/**
 * How a machine stands in a line or two: readings that are past what was meant, what cannot trip, what not to rely on, what
 * is not known. All from the list of what needs action.
 */
export function answer(machine: Machine, report: Report): string {
  const unread = isAllRead(report) ? '' : 'Not everything in the workbook was read: see list.';
  return [standing(machine, unread === ''), unread].filter((part) => part !== '').join(' ');
}

/** The same of the machine alone; it is all OK only where the whole workbook was read. */
export function standing(machine: Machine, wholeRead: boolean): string {
  const { attention, channels } = machine;
  const count = channels.length === 1 ? '1 channel' : `${channels.length} channels`;
  if (attention.length === 0)
    return wholeRead
      ? `${channels.length === 1 ? '' : 'All '}${count} OK.`
      : `${count} read, nothing wrong found.`;
  return [...readings(attention), ...groups(attention), ...faults(attention), others(machine)]
    .filter((sentence) => sentence !== '')
    .join(' ');
}

/** Whether nothing of the workbook was left unread, and nothing critical of it belongs to no machine. */
export function isAllRead(report: Report): boolean {
  return (
    report.notRead.length === 0 &&
    attentionOfNoMachine(report).every(({ severity }) => severity !== 'critical')
  );
}

function readings(attention: readonly Attention[]): string[] {
  const past = withoutRepeatedAlerts(attention).filter(
    ({ code }) => code === 'past-danger' || code === 'past-alert',
  );
  const more = past.length - mostReadings;
  return [
    ...past.slice(0, mostReadings).map(({ headline }) => headline),
    ...(more > 0 ? [`${more} more ${more === 1 ? 'reading is' : 'readings are'} past their level.`] : []),
  ];
}

const groupWords: Readonly<Partial<Record<AttentionCode, string>>> = {
  'group-cannot-trip': 'CANNOT TRIP',
  'group-late': 'Trips late',
  'group-beyond-limit': 'Trips beyond its limit',
};

/** The voting groups that fail to trip as meant, each by the gravest; those of which only the alert is concerned stand further down. */
function groups(attention: readonly Attention[]): string[] {
  const beyond = new Set(
    attention.filter(({ code }) => code === 'group-beyond-limit').map(({ subject }) => subject.group),
  );
  return Object.entries(groupWords).flatMap(([wanted, words]) => {
    const concerned = new Map<string, boolean>();
    for (const { code, severity, subject } of attention) {
      if (code !== wanted || severity !== 'critical' || subject.group === null) continue;
      // What is late beyond its limit is told by the limit.
      if (code === 'group-late' && beyond.has(subject.group)) continue;
      concerned.set(subject.group, subject.multiplier === 1 || (concerned.get(subject.group) ?? false));
    }
    if (concerned.size === 0) return [];
    const names = [...concerned].map(([name, running]) => (running ? name : `${name} at start-up`));
    return [`${words}: ${some(names)}.`];
  });
}

interface Fault {
  readonly code: AttentionCode;
  /** Of a threshold that only warns. */
  readonly warns: boolean;
}

/** What each channel is told by, once: the gravest that is wrong with it, readings aside. */
function faults(attention: readonly Attention[]): string[] {
  const told = new Set<string>();
  const kinds = new Map<string, { readonly fault: Fault; readonly tags: string[] }>();
  for (const entry of withoutRepeatedAlerts(attention)) {
    const { code, subject } = entry;
    const { tag, group, multiplier } = subject;
    if (group !== null || code === 'past-danger' || code === 'past-alert' || told.has(tag)) continue;
    told.add(tag);
    const fault = { code, warns: onlyWarns(entry) };
    // What is told in the same words is told once.
    const key = sentence(fault, '', false);
    const kind = kinds.get(key) ?? { fault, tags: [] };
    kind.tags.push(multiplier === null || multiplier === 1 ? tag : `${tag} at start-up`);
    kinds.set(key, kind);
  }
  return [...kinds.values()].map(({ fault, tags }) => sentence(fault, some(tags), tags.length === 1));
}

function sentence({ code, warns }: Fault, who: string, one: boolean): string {
  const acts = warns ? (one ? 'alarms' : 'alarm') : one ? 'trips' : 'trip';
  const it = one ? 'it' : 'they';
  const alert = warns ? (one ? 'The alert of' : 'The alerts of') : '';
  switch (code) {
    case 'unreachable':
      return `Do not rely on ${who}: ${it} cannot ${warns ? 'alarm' : 'trip'}.`;
    case 'in-bypass':
      return `${who} ${one ? 'is' : 'are'} in bypass.`;
    case 'late':
      return `Do not rely on ${who}: ${it} ${acts} late.`;
    case 'beyond-limit':
      return `${who} ${acts} beyond the machine limit.`;
    case 'may-be-beyond-limit':
      return `${who} may ${warns ? 'alarm' : 'trip'} beyond the machine limit.`;
    case 'undetermined':
      return `${[alert, who].filter(Boolean).join(' ')} uncertain.`;
    case 'incomplete':
      return `${[alert, who].filter(Boolean).join(' ')} not known.`;
    case 'early':
      return `${who} ${acts} early.`;
    case 'did-not-act':
      return `${who} did not ${warns ? 'alarm' : 'trip'} when ${it} should have.`;
    case 'acted-late':
      return `${who} ${warns ? 'alarmed' : 'tripped'} late.`;
    case 'run-up-no-action':
      return `${who} would not have ${warns ? 'alarmed' : 'tripped'} on the last run-up.`;
    case 'run-up-late':
      return `${who} ${acts} late on a run-up.`;
    case 'not-proven':
    case 'finding':
    case 'problem':
    case 'not-read':
    case 'question':
    case 'past-danger':
    case 'past-alert':
    case 'group-cannot-trip':
    case 'group-cannot-act':
    case 'group-tripped':
    case 'group-late':
    case 'group-beyond-limit':
      return `Check ${who}.`;
  }
}

function others({ attention, channels }: Machine): string {
  const named = new Set(attention.map(({ subject }) => subject.tag));
  const fine = channels.filter(({ tag }) => !named.has(tag)).length;
  if (fine === 0) return '';
  return fine === 1 ? '1 other channel OK.' : `${fine} other channels OK.`;
}

function some(names: readonly string[]): string {
  return listed(names, mostNames, 40);
}
