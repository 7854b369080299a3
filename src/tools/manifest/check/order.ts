import { type Element, type Fault, everyElement } from './element.ts';

/** Children in the order the schema demands; `!` marks one that has to be there, `*` one that may stand repeatedly. */
type Children = readonly string[];

/**
 * Source: Microsoft, [MS-OWEMXML] (type fragments) and the add-in only manifest reference, one page an element;
 * only what a task pane add-in with shared runtime, functions and ribbon buttons can hold.
 */
const CHILDREN: Readonly<Record<string, Children>> = {
  OfficeApp: [
    'Id!',
    'AlternateId',
    'Version!',
    'ProviderName!',
    'DefaultLocale!',
    'DisplayName!',
    'Description!',
    'IconUrl!',
    'HighResolutionIconUrl!',
    'SupportUrl!',
    'AppDomains',
    'Hosts!',
    'Requirements!',
    'DefaultSettings!',
    'Permissions!',
    'Dictionary',
    'VersionOverrides!',
    'ExtendedOverrides',
  ],
  AppDomains: ['AppDomain!*'],
  Hosts: ['Host!*'],
  Requirements: ['Sets', 'Methods'],
  Sets: ['Set!*'],
  DefaultSettings: ['SourceLocation!', 'RequestedWidth', 'RequestedHeight'],
  VersionOverrides: [
    'Description',
    'Requirements',
    'Hosts!',
    'Resources!',
    'WebApplicationInfo',
    'EquivalentAddins',
  ],
  'VersionOverrides/Hosts/Host': ['Runtimes!', 'AllFormFactors!', 'DesktopFormFactor!'],
  Runtimes: ['Runtime!'],
  AllFormFactors: ['ExtensionPoint!'],
  DesktopFormFactor: ['GetStarted', 'FunctionFile!', 'ExtensionPoint!*'],
  GetStarted: ['Title!', 'Description!', 'LearnMoreUrl!'],
  'ExtensionPoint:CustomFunctions': ['Script!', 'Page!', 'Metadata!', 'Namespace!'],
  'ExtensionPoint:PrimaryCommandSurface': ['OfficeTab', 'CustomTab'],
  Script: ['SourceLocation!'],
  Page: ['SourceLocation!'],
  Metadata: ['SourceLocation!'],
  OfficeTab: ['Group!*'],
  Group: ['Label!', 'Icon!', 'Control!*'],
  'Control:Button': ['Label!', 'ToolTip', 'Supertip!', 'Icon!', 'Action!', 'Enabled'],
  Supertip: ['Title!', 'Description!'],
  Icon: ['Image!*'],
  'Action:ShowTaskpane': ['TaskpaneId', 'SourceLocation!', 'Title'],
  'Action:ExecuteFunction': ['FunctionName!'],
  Resources: ['Images', 'Urls', 'ShortStrings', 'LongStrings'],
  Images: ['Image!*'],
  Urls: ['Url!*'],
  ShortStrings: ['String!*'],
  LongStrings: ['String!*'],
};

/** Elements out of order, repeated, unknown or missing. */
export function checkOrder(root: Element): Fault[] {
  const rightRoot = root.name === 'OfficeApp' && root.attributes['xsi:type'] === 'TaskPaneApp';
  const faults = everyElement(root).flatMap(checkChildren);
  return rightRoot
    ? faults
    : [
        { line: root.line, message: 'the manifest starts with <OfficeApp xsi:type="TaskPaneApp">' },
        ...faults,
      ];
}

function childrenOf(element: Element): Children {
  const type = element.attributes['xsi:type'];
  const path = [element.parent?.parent?.name, element.parent?.name, element.name].join('/');
  return CHILDREN[path] ?? CHILDREN[`${element.name}:${type}`] ?? CHILDREN[element.name] ?? [];
}

function checkChildren(element: Element): Fault[] {
  const expected = childrenOf(element).map((rule) => ({
    name: rule.replace(/[!*]/g, ''),
    required: rule.includes('!'),
    repeated: rule.includes('*'),
  }));
  const faults: Fault[] = [];
  let reached = -1;
  for (const child of element.children) {
    const place = expected.findIndex(({ name }) => name === child.name);
    const rule = expected[place];
    if (rule === undefined) {
      faults.push(fault(child, `<${child.name}> has no place in <${element.name}>`));
    } else if (place < reached) {
      const before = expected[reached]?.name ?? '';
      faults.push(fault(child, `<${child.name}> has to stand before <${before}> in <${element.name}>`));
    } else if (place === reached && !rule.repeated) {
      faults.push(fault(child, `<${child.name}> stands more than once in <${element.name}>`));
    }
    reached = Math.max(reached, place);
  }
  for (const { name, required } of expected) {
    if (required && !element.children.some((child) => child.name === name)) {
      faults.push(fault(element, `<${element.name}> lacks <${name}>`));
    }
  }
  return faults;
}

function fault({ line }: Element, message: string): Fault {
  return { line, message };
}
