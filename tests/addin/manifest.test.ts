import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { OfficeAddinManifest } from 'office-addin-manifest';
import { describe, expect, it } from 'vitest';
import { iconFile } from '../../src/tools/addin/files.ts';
import { checkManifest } from '../../src/tools/manifest/check.ts';
import { manifestXml } from '../../src/tools/manifest/manifest.ts';

const ADDRESS = 'https://host.example/tripdrift';
const XML = manifestXml({ address: ADDRESS, version: '1.2.3.0', metadataFile: 'functions.0a1b2c3d.json' });
const ICONS = join(import.meta.dirname, '..', '..', 'src', 'tools', 'icons');

/** A build with everything in it; each missing or exchanged file is a planted fault. */
function build(changes: Readonly<Record<string, Uint8Array | undefined>> = {}) {
  const page = new TextEncoder().encode('<!doctype html>');
  const icon = (size: number) => readFileSync(join(ICONS, `icon-${size}.png`));
  const files: Record<string, Uint8Array | undefined> = {
    'taskpane.html': page,
    'functions.js': page,
    'functions.0a1b2c3d.json': page,
    'help.html': page,
    ...Object.fromEntries([16, 20, 24, 32, 40, 48, 64, 80].map((size) => [iconFile(size), icon(size)])),
    ...changes,
  };
  return (address: string) =>
    address.startsWith(`${ADDRESS}/`) ? files[address.slice(ADDRESS.length + 1)] : undefined;
}

function faultsIn(xml: string, files = build()): string {
  return checkManifest(xml, files)
    .map(({ line, message }) => `${line}: ${message}`)
    .join('\n');
}

/** The manifest with one place changed; fails where that place is not there. */
function changed(from: string | RegExp, to: string): string {
  const xml = XML.replace(from, to);
  expect(xml).not.toBe(XML);
  return xml;
}

function moved(block: RegExp, before: string): string {
  const [found = ''] = block.exec(XML) ?? [];
  expect(found).not.toBe('');
  return XML.replace(found, '').replace(before, `${found}${before}`);
}

/** Rules: Microsoft, add-in only manifest reference and [MS-OWEMXML]; each fault breaks one of them. */
const PLANTED: readonly (readonly [string, () => string, RegExp])[] = [
  ['an element closed wrongly', () => changed('</Hosts>', '</Host>'), /unexpected close tag|unmatched/i],
  [
    'Requirements before Hosts',
    () => moved(/<Requirements>[\s\S]*?<\/Requirements>\s*/, '<Hosts>'),
    /<Hosts> has to stand before <Requirements>/,
  ],
  [
    'Runtimes after AllFormFactors',
    () => moved(/<Runtimes>[\s\S]*?<\/Runtimes>\s*/, '<DesktopFormFactor>'),
    /<AllFormFactors> has to stand before <Runtimes>|<Runtimes> has to stand before <AllFormFactors>/,
  ],
  ['no Script', () => changed(/<Script>[\s\S]*?<\/Script>/, ''), /<ExtensionPoint> lacks <Script>/],
  ['no Supertip', () => changed(/<Supertip>[\s\S]*?<\/Supertip>/, ''), /<Control> lacks <Supertip>/],
  ['no icons for the list of add-ins', () => changed(/<IconUrl.*?\/>/, ''), /<OfficeApp> lacks <IconUrl>/],
  ['no support address', () => changed(/<SupportUrl.*?\/>/, ''), /<OfficeApp> lacks <SupportUrl>/],
  ['no Namespace', () => changed(/<Namespace.*?\/>/, ''), /lacks <Namespace>/],
  [
    'an element of another kind of add-in',
    () => changed('<Permissions>', '<Rule/><Permissions>'),
    /<Rule> has no place/,
  ],
  [
    'an element twice',
    () => changed('<Permissions>', '<Permissions>ReadDocument</Permissions><Permissions>'),
    /more than once/,
  ],
  ['another kind of add-in', () => changed('"TaskPaneApp"', '"ContentApp"'), /starts with/],
  [
    'AppDomains with nothing in it',
    () => changed('<Hosts>', '<AppDomains/><Hosts>'),
    /<AppDomains> lacks <AppDomain>/,
  ],
  [
    'a domain without protocol',
    () => changed('<Hosts>', '<AppDomains><AppDomain>host.example</AppDomain></AppDomains><Hosts>'),
    /<AppDomain> is "host.example"/,
  ],
  ['an id that is no UUID', () => changed(/<Id>.*<\/Id>/, '<Id>tripdrift</Id>'), /<Id> is "tripdrift"/],
  ['a version of words', () => changed('1.2.3.0', 'one'), /<Version> is "one"/],
  [
    'an unknown permission',
    () => changed('ReadWriteDocument', 'Everything'),
    /<Permissions> is "Everything"/,
  ],
  [
    'a name of 126 characters',
    () => changed('DisplayName DefaultValue="Tripdrift"', `DisplayName DefaultValue="${'x'.repeat(126)}"`),
    /<DisplayName> has 126/,
  ],
  [
    'a description of 251 characters',
    () => changed(/<Description DefaultValue=".*?"/, `<Description DefaultValue="${'x'.repeat(251)}"`),
    /<Description> has 251/,
  ],
  [
    'a short text of 126 characters',
    () => changed('"Audit now"', `"${'x'.repeat(126)}"`),
    /<String> has 126/,
  ],
  [
    'a long text of 251 characters',
    () => changed(/(id="Open.Text" DefaultValue)=".*?"/, `$1="${'x'.repeat(251)}"`),
    /<String> has 251/,
  ],
  ['an empty text', () => changed('DefaultValue="Audit now"', 'DefaultValue=""'), /<String> is empty/],
  [
    'a resource id of 33 characters',
    () => XML.replaceAll('"Open.Text"', `"${'x'.repeat(33)}"`),
    /1 to 32 characters/,
  ],
  [
    'a reference to nothing',
    () => changed('resid="Open.Label"', 'resid="Open.Lable"'),
    /"Open.Lable", which is not among/,
  ],
  [
    'a long text where a short one belongs',
    () => changed('<Label resid="Open.Label"', '<Label resid="Open.Text"'),
    /"Open.Text", which is not among the ShortStrings/,
  ],
  [
    'a resource twice',
    () => changed('<bt:String id="Open.Label"', '<bt:String id="Audit.Label"'),
    /"Audit.Label" stands twice/,
  ],
  [
    'a resource nobody uses',
    () => changed('<bt:ShortStrings>', '<bt:ShortStrings><bt:String id="Idle" DefaultValue="x"/>'),
    /nothing refers to resource "Idle"/,
  ],
  ['a runtime that ends', () => changed('lifetime="long"', 'lifetime="short"'), /lifetime="long"/],
  [
    'commands in another page',
    () => changed('<FunctionFile resid="Pane.Url"', '<FunctionFile resid="Help.Url"'),
    /<FunctionFile> refers to "Help.Url"/,
  ],
  [
    'functions in another page',
    () => changed(/(<Page>\s*<SourceLocation resid)="Pane.Url"/, '$1="Help.Url"'),
    /<SourceLocation> refers to "Help.Url"/,
  ],
  [
    'a button for another page',
    () => changed(/(ShowTaskpane">\s*<SourceLocation resid)="Pane.Url"/, '$1="Help.Url"'),
    /<SourceLocation> refers to "Help.Url"/,
  ],
  [
    'a pane with an id',
    () => changed('ShowTaskpane">', 'ShowTaskpane"><TaskpaneId>a</TaskpaneId>'),
    /leave out <TaskpaneId>/,
  ],
  [
    'a start page other than the runtime',
    () =>
      changed(
        '<SourceLocation DefaultValue="https://host.example/tripdrift/taskpane.html"',
        '<SourceLocation DefaultValue="https://host.example/tripdrift/help.html"',
      ),
    /differs from the page of the runtime/,
  ],
  [
    'two controls of one id',
    () => changed('id="Tripdrift.Audit"', 'id="Tripdrift.Open"'),
    /id "Tripdrift.Open" stands twice/,
  ],
  ['an unknown requirement set', () => changed('"ExcelApi"', '"ExcelApiDesktop"'), /names "ExcelApiDesktop"/],
  ['a requirement set without version', () => changed(' MinVersion="1.11"', ''), /needs a version/],
  ['no icon of 80 pixels', () => changed(/<bt:Image size="80" resid="Icon.80"\/>/, ''), /lacks the size 80/],
  [
    'an icon of 96 pixels',
    () => changed('<bt:Image size="64"', '<bt:Image size="96"'),
    /size 96 that Office does not know/,
  ],
  [
    'an icon at another size than its own',
    () => changed('size="40" resid="Icon.40"', 'size="40" resid="Icon.48"'),
    /PNG of 40×40 pixels; it is png 48×48/,
  ],
  [
    'plain http',
    () => changed('https://host.example/tripdrift/help.html', 'http://host.example/tripdrift/help.html'),
    /is not an https address/,
  ],
  [
    'another host',
    () => changed(/(id="Help.Url" DefaultValue)=".*?"/, '$1="https://elsewhere.example/help.html"'),
    /another host than the pane/,
  ],
  [
    'a page outside the path',
    () => changed(/(id="Help.Url" DefaultValue)=".*?"/, '$1="https://host.example/help.html"'),
    /no built file answers https:\/\/host.example\/help.html/,
  ],
];

describe('manifest', () => {
  it('is good', () => {
    expect(faultsIn(XML)).toBe('');
  });

  it.each(PLANTED)('is refused with %s', (_, plant, expected) => {
    expect(faultsIn(plant())).toMatch(expected);
  });

  it.each(['taskpane.html', 'functions.js', 'functions.0a1b2c3d.json', 'help.html', 'icons/icon-80.png'])(
    'is refused where the build lacks %s',
    (file) => {
      expect(faultsIn(XML, build({ [file]: undefined }))).toContain(
        `no built file answers ${ADDRESS}/${file}`,
      );
    },
  );

  it('is refused with an icon file that is no picture, or larger than Office takes', () => {
    expect(faultsIn(XML, build({ 'icons/icon-24.png': build()(`${ADDRESS}/help.html`) }))).toContain(
      'it is no picture',
    );
    expect(faultsIn(XML, build({ 'icons/icon-24.png': new Uint8Array(102_401) }))).toContain('100 KB');
  });

  it('names the line of a fault', () => {
    const line = XML.split('\n').findIndex((text) => text.includes('<Permissions>')) + 1;
    expect(faultsIn(changed('ReadWriteDocument', 'Everything'))).toMatch(new RegExp(`^${line}: `));
  });

  it('is read by the manifest reader that Microsoft publishes', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'tripdrift-manifest-'));
    try {
      writeFileSync(join(folder, 'manifest.xml'), XML);
      const read = await OfficeAddinManifest.readManifestFile(join(folder, 'manifest.xml'));
      expect(read).toMatchObject({
        displayName: 'Tripdrift',
        providerName: 'Tripdrift',
        version: '1.2.3.0',
        hosts: ['Workbook'],
        permissions: 'ReadWriteDocument',
        iconUrl: `${ADDRESS}/icons/icon-32.png`,
        highResolutionIconUrl: `${ADDRESS}/icons/icon-64.png`,
        supportUrl: `${ADDRESS}/help.html`,
        defaultSettings: { sourceLocation: `${ADDRESS}/taskpane.html` },
      });
    } finally {
      rmSync(folder, { recursive: true });
    }
  });
});
