import type { Attention, Report } from '../../src/audit/model/report.ts';

/** Something that shows a report to people. */
export interface Surface {
  readonly name: string;
  /** All that it says; white space does not count. */
  readonly text: (report: Report) => string;
  /** Words by which it says that all is well. */
  readonly allOk: readonly string[];
  /** Whether it shows an entry with its subject; where left out, whether its headline stands there. */
  readonly shows?: (text: string, entry: Attention) => boolean;
}

/** A text whose line breaks and spaces are single spaces. */
export function flat(text: string): string {
  return text.replaceAll(/\s+/gu, ' ');
}

export function isShown({ shows }: Surface, text: string, entry: Attention): boolean {
  return shows ? shows(text, entry) : text.includes(flat(entry.headline));
}

export function saysAllOk({ allOk }: Surface, text: string): boolean {
  return allOk.some((words) => text.includes(words));
}
