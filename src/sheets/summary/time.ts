/** `2025-03-14T08:05:00.000Z` as people write it. */
export function time(iso: string): string {
  return `${iso.slice(0, 10)} ${iso.slice(11, 16)} UTC`;
}
