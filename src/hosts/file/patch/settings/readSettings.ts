import { readRelationships } from '../../read/relationships.ts';
import { readXml } from '../../read/xml.ts';
import { type Archive, openZip, type ZipEntry } from '../../zip/archive.ts';
import { defaultLimits } from '../../zip/limits.ts';
import { FileRefused } from '../../zip/refused.ts';
import { escapeXml } from '../../write/xml/text.ts';

/** Documents that travel with a workbook: JSON by key. */
export type Settings = ReadonlyMap<string, string>;

/** Namespace of the part's elements, by which it is found. */
export const namespace = 'urn:tripdrift:workbook-settings:1';

/** The part that holds a workbook's settings, with what it says. */
export interface SettingsPart {
  readonly entry: ZipEntry;
  readonly settings: Settings;
}

/** The settings that a workbook brings along; none where it has none. Throws FileRefused for bytes that are no workbook. */
export function readSettings(bytes: Uint8Array): Settings {
  return settingsPart(openZip(bytes, defaultLimits))?.settings ?? new Map();
}

/** Finds the settings among the custom XML parts of a workbook (ECMA-376 part 1, section 15.2.5); parts of others may hold anything. */
export function settingsPart(archive: Archive): SettingsPart | undefined {
  const book = readRelationships(archive, '', defaultLimits).find(({ kind }) => kind === 'officeDocument');
  if (book === undefined) return undefined;
  for (const { kind, target } of readRelationships(archive, book.target, defaultLimits)) {
    const entry = kind === 'customXml' ? archive.get(target) : undefined;
    const settings = entry && settingsIn(archive, entry);
    if (entry && settings) return { entry, settings };
  }
  return undefined;
}

function settingsIn(archive: Archive, entry: ZipEntry): Settings | undefined {
  const found: { settings?: Map<string, string> } = {};
  let key: string | undefined;
  let json = '';
  try {
    readXml(archive, entry, defaultLimits, {
      open(name, attributes, parents) {
        const isOurs = name === 'settings' && attributes['xmlns'] === namespace;
        if (parents.length === 0 && isOurs) found.settings = new Map();
        key = found.settings && parents.length === 1 && name === 'setting' ? attributes['key'] : undefined;
        json = '';
      },
      text(run) {
        if (key !== undefined) json += run;
      },
      close(_, parents) {
        if (key !== undefined && parents.length === 1) found.settings?.set(key, json);
        key = undefined;
      },
    });
  } catch (error) {
    if (error instanceof FileRefused) return undefined;
    throw error;
  }
  return found.settings;
}

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
