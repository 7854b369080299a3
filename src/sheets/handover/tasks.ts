import type { Attention } from '../../audit/model/report.ts';
import { trips } from '../../audit/model/threshold.ts';
import type { Machine } from '../machines.ts';
import { listed } from './clipped.ts';

/** One thing to do, and about what. */
export interface Task {
  readonly about: string;
  readonly words: string;
}

/**
 * What there is to do about a machine, in the order of what needs action: each next step once, for all that it concerns. What
 * the alert of a channel asks beside its danger, by the same fault, is left to the annex.
 */
export function tasksOf({ attention }: Machine): readonly Task[] {
  const tasks = new Map<string, string[]>();
  const told = new Set<string>();
  for (const entry of attention) {
    const { doNext, code, subject } = entry;
    const key = JSON.stringify([code, subject.tag, subject.group]);
    if (told.has(key) && !isTrip(entry)) continue;
    told.add(key);
    const about = subject.group ?? subject.tag;
    const names = tasks.get(doNext) ?? [];
    if (!names.includes(about)) names.push(about);
    tasks.set(doNext, names);
  }
  return [...tasks].map(([words, names]): Task => ({ about: listed(names, 4, 40), words }));
}

function isTrip({ subject }: Attention): boolean {
  return subject.threshold !== null && trips(subject.threshold);
}
