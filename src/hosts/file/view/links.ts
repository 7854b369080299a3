import { parseArea } from '../read/area.ts';
import type { Attributes } from '../read/branches.ts';
import { unescapeText } from '../read/escapes.ts';
import type { ViewLink } from './types.ts';

/**
 * A `hyperlink` element (ECMA-376 part 1, section 18.3.1.47) that leads to a cell of the workbook; undefined for one that
 * leads out of it, to a name, or nowhere.
 */
export function linkTo({ ref, location }: Attributes): ViewLink | undefined {
  const area = parseArea(ref ?? '');
  const [sheet, reference] = parted(unescapeText(location ?? ''));
  const target = parseArea(reference.replaceAll('$', ''));
  if (!area || !target || sheet === '') return undefined;
  return { area, to: { sheet, row: target.top, column: target.left } };
}

/** The name of the sheet and what follows it: `'Audit''s'!B4` → `Audit's` and `B4`. */
function parted(location: string): readonly [sheet: string, reference: string] {
  const plain = location.startsWith('#') ? location.slice(1) : location;
  const mark = plain.lastIndexOf('!');
  const name = plain.slice(0, Math.max(0, mark));
  const quoted = name.length > 1 && name.startsWith("'") && name.endsWith("'");
  return [quoted ? name.slice(1, -1).replaceAll("''", "'") : name, plain.slice(mark + 1)];
}
