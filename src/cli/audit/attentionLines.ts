import type { Attention, Report } from '../../audit/model/report.ts';
import { tagKey } from '../../audit/read/tables/tagKey.ts';
import type { Style } from '../style.ts';
import { plain, wrapped } from '../terminal.ts';

/** Characters of the widest word for a severity. */
const widest = 'critical'.length;
/** Longest sentence that is shown whole. */
const longest = 600;

/** One thing that needs action: how grave it is, what it is, and below it what to do; `from` stands before what it is. */
export function attentionLine(
  { severity, headline, doNext }: Pick<Attention, 'severity' | 'headline' | 'doNext'>,
  width: number,
  style: Style,
  from: string = '',
): string {
  const mark = `${style.signs[severity]}${severity.padEnd(widest)}`;
  const indent = ' '.repeat(mark.length + 4);
  const said = wrapped(`  ${mark}  ${from}${plain(headline, longest)}`, width, indent);
  const todo = wrapped(`${indent}${plain(doNext, longest)}`, width, indent);
  return `  ${style[severity](mark)}${said.slice(2 + mark.length)}\n${todo}`;
}

/** The machine before what is said of a channel or group whose name stands on several; empty for the others. */
export function machineIfShared({ channels, groups, attention }: Report): (entry: Attention) => string {
  const machines = new Map<string, Set<string>>();
  const seen = (name: string, machine: string): void => {
    if (name === '' || machine === '') return;
    const key = tagKey(name);
    machines.set(key, (machines.get(key) ?? new Set()).add(tagKey(machine)));
  };
  for (const { tag, machine } of channels) seen(tag, machine);
  for (const { name, machine } of groups) seen(name, machine);
  for (const { subject } of attention) seen(subject.tag, subject.machine);
  return ({ subject: { tag, group, machine } }) => {
    const shared = (machines.get(tagKey(group ?? tag))?.size ?? 0) > 1;
    return shared && machine !== '' ? `${plain(machine, 60)}: ` : '';
  };
}

/** What is left out of a list of what needs action, by severity; nothing where nothing is. */
export function andMore(rest: readonly Pick<Attention, 'severity'>[], where: string): string[] {
  return moreOf(rest.length, rest.filter(({ severity }) => severity === 'critical').length, where);
}

/** As `andMore`, from the number of all that is left out and of what of it is critical. */
export function moreOf(all: number, critical: number, where: string): string[] {
  if (all === 0) return [];
  return [`  and ${all} more${critical > 0 ? `, ${critical} of them critical` : ''}: ${where}`];
}

/** How many things need action, in a sentence. */
export function countSentence(all: number, critical: number): string {
  const things = all === 1 ? '1 thing needs action' : `${all} things need action`;
  if (critical === 0) return `${things}, nothing critical.`;
  if (all === critical) return all === 1 ? '1 critical thing needs action.' : `${things}, all critical.`;
  return `${things}, ${critical} of them critical.`;
}
