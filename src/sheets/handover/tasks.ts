import type { Machine } from '../machines.ts';
import { listed } from './paper.ts';
import { withoutRepeatedAlerts } from './withoutRepeatedAlerts.ts';

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
  for (const { doNext, subject } of withoutRepeatedAlerts(attention)) {
    const about = subject.group ?? subject.tag;
    const names = tasks.get(doNext) ?? [];
    if (!names.includes(about)) names.push(about);
    tasks.set(doNext, names);
  }
  return [...tasks].map(([words, names]): Task => ({ about: listed(names, 4, 40), words }));
}
