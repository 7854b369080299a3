const BEGIN = '<!-- functions:begin -->';
const END = '<!-- functions:end -->';

/**
 * A page with the text between its two function markers replaced.
 * @throws Error where a marker is missing.
 */
export function withSection(page: string, section: string): string {
  const begin = page.indexOf(BEGIN);
  const end = page.indexOf(END, begin);
  if (begin < 0 || end < 0)
    throw new Error(`README.md needs the markers ${BEGIN} and ${END}, in this order.`);
  return `${page.slice(0, begin)}${BEGIN}\n\n${section}\n\n${page.slice(end)}`;
}
