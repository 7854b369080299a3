import XMLBuilder from 'fast-xml-builder';
import { HELP_FILE, PANE_FILE, iconFile } from '../files.ts';
import { REQUIREMENTS } from './requirements.ts';
import { resourceList } from './resources.ts';
import { RIBBON, reference } from './ribbon.ts';
import { DESCRIPTION, ID, NAME } from './texts.ts';

export interface ManifestOptions {
  /** Where the built files are served, as parseAddress gives it. */
  readonly address: string;
  /** Three or four numbers with dots: Office takes a manifest with a higher one as an update. */
  readonly version: string;
  /** Name of the file that describes the worksheet functions. */
  readonly metadataFile: string;
}

/**
 * The add-in only manifest as XML. One page is pane, functions and commands (the shared runtime), so each of them
 * refers to the same address. Elements stand in the order that the schema demands.
 * Source: Microsoft, [MS-OWEMXML] and "Configure your Office Add-in to use a shared runtime".
 */
export function manifestXml({ address, version, metadataFile }: ManifestOptions): string {
  const builder = new XMLBuilder({
    attributeNamePrefix: '@',
    ignoreAttributes: false,
    format: true,
    suppressEmptyNode: true,
  });
  return builder.build({
    '?xml': { '@version': '1.0', '@encoding': 'UTF-8' },
    OfficeApp: {
      '@xmlns': 'http://schemas.microsoft.com/office/appforoffice/1.1',
      '@xmlns:xsi': 'http://www.w3.org/2001/XMLSchema-instance',
      '@xmlns:bt': 'http://schemas.microsoft.com/office/officeappbasictypes/1.0',
      '@xsi:type': 'TaskPaneApp',
      Id: ID,
      Version: version,
      ProviderName: NAME,
      DefaultLocale: 'en-US',
      DisplayName: { '@DefaultValue': NAME },
      Description: { '@DefaultValue': DESCRIPTION },
      IconUrl: { '@DefaultValue': `${address}/${iconFile(32)}` },
      HighResolutionIconUrl: { '@DefaultValue': `${address}/${iconFile(64)}` },
      SupportUrl: { '@DefaultValue': `${address}/${HELP_FILE}` },
      Hosts: { Host: { '@Name': 'Workbook' } },
      Requirements: REQUIREMENTS,
      DefaultSettings: { SourceLocation: { '@DefaultValue': `${address}/${PANE_FILE}` } },
      Permissions: 'ReadWriteDocument',
      VersionOverrides: overrides(address, metadataFile),
    },
  });
}

function overrides(address: string, metadataFile: string) {
  return {
    '@xmlns': 'http://schemas.microsoft.com/office/taskpaneappversionoverrides',
    '@xsi:type': 'VersionOverridesV1_0',
    Hosts: {
      Host: {
        '@xsi:type': 'Workbook',
        Runtimes: { Runtime: { ...reference('Pane.Url'), '@lifetime': 'long' } },
        AllFormFactors: {
          ExtensionPoint: {
            '@xsi:type': 'CustomFunctions',
            Script: { SourceLocation: reference('Functions.Script.Url') },
            Page: { SourceLocation: reference('Pane.Url') },
            Metadata: { SourceLocation: reference('Functions.Metadata.Url') },
            Namespace: reference('Functions.Namespace'),
          },
        },
        DesktopFormFactor: {
          GetStarted: {
            Title: reference('Start.Title'),
            Description: reference('Start.Text'),
            LearnMoreUrl: reference('Help.Url'),
          },
          FunctionFile: reference('Pane.Url'),
          ExtensionPoint: RIBBON,
        },
      },
    },
    Resources: resourceList(address, metadataFile),
  };
}
