import type { Report } from '../audit/model/report.ts';

/** What was audited, when, and by which rules, as the sheets say it. */
export function auditedLine({ input, generated, version }: Report): string {
  return `${input} · audited ${timeText(generated)} · rules version ${version}`;
}

/** `2025-03-14T08:05:00.000Z` as people write it, in UTC: `2025-03-14 08:05 UTC`. */
export function timeText(iso: string): string {
  return `${iso.slice(0, 10)} ${iso.slice(11, 16)} UTC`;
}

/** The file and the time that such a line names; `null` where a text is none. The minute is as fine as it goes. */
export function readAuditedLine(text: string): { readonly input: string; readonly audited: string } | null {
  const found = /^(.*) · audited (\d{4}-\d\d-\d\d) (\d\d:\d\d) UTC · /u.exec(text);
  return found ? { input: found[1] ?? '', audited: `${found[2] ?? ''}T${found[3] ?? ''}:00.000Z` } : null;
}
