import { quotedName } from '../../../formats/reference.ts';
import type { LinkTarget } from '../../../../sheets/model.ts';
import type { PlacedLink } from '../../../../sheets/links.ts';
import { escapeXml } from '../xml/text.ts';

/** Links to cells of the workbook (ECMA-376 part 1, 18.3.1.47); those to sheets that are not there are left out. */
export function hyperlinks(
  links: readonly PlacedLink[],
  nameOf: (target: LinkTarget) => string | undefined,
): string {
  const starts = new Map<string, string>();
  const markup = links.map(({ address, to }) => {
    const name = nameOf(to);
    if (name === undefined) return '';
    const start = starts.get(name) ?? escapeXml(`${quotedName(name)}!`);
    starts.set(name, start);
    return `<hyperlink ref="${address}" location="${start}${to.column}${to.row}"/>`;
  });
  const all = markup.join('');
  return all === '' ? '' : `<hyperlinks>${all}</hyperlinks>`;
}
