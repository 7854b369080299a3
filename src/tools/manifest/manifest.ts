import XMLBuilder from 'fast-xml-builder';
import { HELP_FILE, PANE_FILE, iconFile, FUNCTIONS_FILE, ICON_SIZES } from '../addin/files.ts';
import { RIBBON, reference, iconId } from './ribbon.ts';
import { NAMESPACE } from '../../functions/catalogue.ts';

/** What Excel shows of the add-in outside its own pages. */
const NAME = 'Tripdrift';

const DESCRIPTION =
  'Shows where each alert and danger setpoint really acts when a probe chain is not as sensitive as the monitor believes. Advisory only: it changes no monitor and replaces no review.';

/** Identifies the add-in to Office for good: a random UUID (RFC 9562, version 4), never to be changed. */
const ID = '2bc4a934-2456-4d63-ae55-0f644f8c2b9b';

/** Texts of up to 125 characters, by resource id. */
const SHORT_TEXTS = {
  'Functions.Namespace': NAMESPACE,
  'Start.Title': 'Tripdrift is ready',
  'Group.Label': NAME,
  'Open.Label': 'Check setpoints',
  'Open.Title': 'Check setpoints',
  'Audit.Label': 'Audit now',
  'Audit.Title': 'Audit this workbook now',
} as const;

/** Texts of up to 250 characters, by resource id. */
const LONG_TEXTS = {
  'Start.Text':
    'On the Home tab, in the group Tripdrift, choose Check setpoints for a first answer, or Audit now to audit the channel list and monitor settings in this workbook.',
  'Open.Text':
    'Opens the Tripdrift pane: where one setpoint really acts, the audit of this workbook, and the state of its worksheet functions.',
  'Audit.Text':
    'Reads the channel list and the monitor settings of this workbook, and lists the channels whose alert or danger acts too late or too early. Nothing is written until you ask for it.',
} as const;

interface Resource {
  readonly '@id': string;
  readonly '@DefaultValue': string;
}

/**
 * What Excel must offer before it shows the add-in at all. Below ExcelApi 1.11 the pane could not read how the
 * workbook writes its decimals; without SharedRuntime 1.1 pane and functions could not live in one page. Worksheet
 * functions themselves are not demanded: where Excel does not run them, the pane still audits and says so.
 */
const REQUIREMENTS = {
  Sets: {
    '@DefaultMinVersion': '1.1',
    Set: [
      { '@Name': 'SharedRuntime', '@MinVersion': '1.1' },
      { '@Name': 'ExcelApi', '@MinVersion': '1.11' },
    ],
  },
};

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

function resources(values: Readonly<Record<string, string>>): Resource[] {
  return Object.entries(values).map(([id, value]) => ({ '@id': id, '@DefaultValue': value }));
}

/** Images, addresses and texts that the ribbon and the functions refer to; `address` as parseAddress gives it. */
function resourceList(address: string, metadataFile: string) {
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
