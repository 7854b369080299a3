import { FUNCTIONS_FILE, HELP_FILE, ICON_SIZES, PANE_FILE, iconFile } from '../files.ts';
import { iconId } from './ribbon.ts';
import { LONG_TEXTS, SHORT_TEXTS } from './texts.ts';

interface Resource {
  readonly '@id': string;
  readonly '@DefaultValue': string;
}

function resources(values: Readonly<Record<string, string>>): Resource[] {
  return Object.entries(values).map(([id, value]) => ({ '@id': id, '@DefaultValue': value }));
}

/** Images, addresses and texts that the ribbon and the functions refer to; `address` as parseAddress gives it. */
export function resourceList(address: string, metadataFile: string) {
  const icons = ICON_SIZES.map((size): [string, string] => [iconId(size), `${address}/${iconFile(size)}`]);
  return {
    'bt:Images': { 'bt:Image': resources(Object.fromEntries(icons)) },
    'bt:Urls': {
      'bt:Url': resources({
        'Pane.Url': `${address}/${PANE_FILE}`,
        'Functions.Script.Url': `${address}/${FUNCTIONS_FILE}`,
        'Functions.Metadata.Url': `${address}/${metadataFile}`,
        'Help.Url': `${address}/${HELP_FILE}`,
      }),
    },
    'bt:ShortStrings': { 'bt:String': resources(SHORT_TEXTS) },
    'bt:LongStrings': { 'bt:String': resources(LONG_TEXTS) },
  };
}
