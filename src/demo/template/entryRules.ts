import type { Allowed, Validation } from '../parts/validation.ts';
import type { ColumnHelp } from './templateColumn.ts';

/** The rules for what may be typed into the rows from `top` to `bottom` of a table whose columns begin in column A. */
export function entryRules(
  columns: readonly (ColumnHelp & { readonly header: string })[],
  top: number,
  bottom: number,
): readonly Validation[] {
  return columns.flatMap(({ header, allowed, warnOnly }, index): Validation[] => {
    if (!allowed) return [];
    const column = index + 1;
    return [
      {
        area: { top, bottom, left: column, right: column },
        allowed,
        message: `${header}: ${warnOnly ? 'usually ' : ''}${expected(allowed)}`,
        ...(warnOnly ? { warnOnly } : {}),
      },
    ];
  });
}

function expected(allowed: Allowed): string {
  if ('words' in allowed) return `one of ${allowed.words.join(', ')}.`;
  if ('above' in allowed) return `a number above ${allowed.above}, without its unit.`;
  if ('atLeast' in allowed) return `a number, ${allowed.atLeast} or more, without its unit.`;
  if ('dateFrom' in allowed) return 'a date.';
  return `a number from ${allowed.from} to ${allowed.to}, without its unit.`;
}
