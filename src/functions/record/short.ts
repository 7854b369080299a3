/** A number as a message shows it: six digits at most. */
export function short(value: number | null): string {
  return value === null ? '' : String(Number(value.toPrecision(6)));
}
