/** A day by the clock of the machine, as 2026-11-27. */
export function dayOf(time: Date): string {
  return [time.getFullYear(), time.getMonth() + 1, time.getDate()]
    .map((part) => String(part).padStart(2, '0'))
    .join('-');
}
