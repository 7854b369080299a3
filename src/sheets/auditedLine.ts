import type { Report } from '../audit/model/report.ts';

/** What was audited, when, and by which rules, as the sheets say it. */
export function auditedLine({ input, generated, version }: Report): string {
  return `${input} · audited ${timeText(generated)} · rules version ${version}`;
}

/** `2025-03-14T08:05:00.000Z` as people write it, in UTC: `2025-03-14 08:05 UTC`. */
export function timeText(iso: string): string {
  return `${iso.slice(0, 10)} ${iso.slice(11, 16)} UTC`;
}

/** What such a line says. */
export interface AuditedLine {
  readonly input: string;
  /** ISO 8601, to the minute. */
  readonly audited: string;
  /** Version of the rules; `null` where none is named. */
  readonly rules: string | null;
}

/** The file, the time and the rules that such a line names; `null` where a text is none. The minute is as fine as it goes. */
export function readAuditedLine(text: string): AuditedLine | null {
  const found =
    /^(.*) · audited (\d{4}-\d\d-\d\d) (\d\d:\d\d) UTC · (?:rules version (\d+\.\d+\.\d+))?/u.exec(text);
  if (!found) return null;
  const [, input = '', day = '', time = '', rules = null] = found;
  return { input, audited: `${day}T${time}:00.000Z`, rules };
}
