import { escapeXml } from '../../write/xml/text.ts';

/** Documents that travel with a workbook: JSON by key. */
export type Settings = ReadonlyMap<string, string>;

/** Namespace of the part's elements, by which it is found. */
export const namespace = 'urn:tripdrift:workbook-settings:1';

/** The part's text. Keys in their order, so that the same settings are the same bytes. */
export function settingsMarkup(settings: Settings): string {
  const entries = [...settings]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([key, json]) => `<setting key="${escapeXml(key)}">${escapeXml(inXml(json))}</setting>`);
  return `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n<settings xmlns="${namespace}">${entries.join('')}</settings>`;
}

/** JSON without the two characters that XML 1.0 has not and JSON may hold as they are; it writes the others as codes itself. */
function inXml(json: string): string {
  return json.replace(/[\uFFFE\uFFFF]/g, (character) => `\\u${character.charCodeAt(0).toString(16)}`);
}
