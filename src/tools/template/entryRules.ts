import type { Allowed, ColumnEntry, System } from '../../audit/read/tables/columnSpec.ts';
import type { Validation } from '../demo/parts/validation.ts';
import { sampleIn } from './templateColumn.ts';

/** Most characters of the title and of the text that a spreadsheet shows at a selected cell (Excel's documented limits). */
const most = { title: 32, text: 255 } as const;

type PromptedColumn = ColumnEntry & { readonly header: string; readonly needed?: boolean };

/**
 * The rules for what may be typed into the rows from `top` to `bottom` of a table whose columns begin in column A, each with
 * what is shown while one of its cells is selected.
 */
export function entryRules(
  columns: readonly PromptedColumn[],
  top: number,
  bottom: number,
  system: System,
): readonly Validation[] {
  return columns.map((column, index): Validation => {
    const { header, allowed, warnOnly } = column;
    const area = { top, bottom, left: index + 1, right: index + 1 };
    const prompt = promptOf(column, system);
    if (!allowed) return { area, prompt };
    return {
      area,
      prompt,
      allowed,
      message: `${header}: ${warnOnly ? 'usually ' : ''}${expected(allowed)}`,
      ...(warnOnly ? { warnOnly } : {}),
    };
  });
}

function promptOf(column: PromptedColumn, system: System): NonNullable<Validation['prompt']> {
  const { header, meaning } = column;
  const text = `${meaning} Example: ${sampleIn(column, system)}`;
  if (text.length > most.text) throw new RangeError(`the prompt of ${header} has ${text.length} characters`);
  return { title: header.length > most.title ? `${header.slice(0, most.title - 1)}…` : header, text };
}

function expected(allowed: Allowed): string {
  if ('words' in allowed) return `one of ${allowed.words.join(', ')}.`;
  if ('above' in allowed) return `a number above ${allowed.above}, without its unit.`;
  if ('atLeast' in allowed) return `a number, ${allowed.atLeast} or more, without its unit.`;
  if ('dateFrom' in allowed) return 'a date.';
  return `a number from ${allowed.from} to ${allowed.to}, without its unit.`;
}
