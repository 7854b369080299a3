import { describe, expect, it } from 'vitest';
import { parseOptions, macFolder, steps } from '../../src/tools/sideload/main.ts';
import { registryBytes, registryFile } from '../../src/tools/sideload/registry.ts';

describe('sideloading', () => {
  /** Form of the file: Microsoft, "Sideload Office Add-ins for testing from a network share". */
  it('writes the registry file that Microsoft describes', () => {
    const file = registryFile(String.raw`\\TestServer\OfficeAddinManifests`);
    const guid = String.raw`\{[\da-f]{8}(-[\da-f]{4}){3}-[\da-f]{12}\}`;
    expect(file).toMatch(/^Windows Registry Editor Version 5\.00\n\n/);
    expect(file).toMatch(
      new RegExp(
        String.raw`\[HKEY_CURRENT_USER\\Software\\Microsoft\\Office\\16\.0\\WEF\\TrustedCatalogs\\${guid}\]`,
      ),
    );
    expect(file).toMatch(new RegExp(`"Id"="${guid}"`));
    expect(file).toContain(String.raw`"Url"="\\\\TestServer\\OfficeAddinManifests"`);
    expect(file).toContain('"Flags"=dword:00000001');
    expect(new Set(file.match(new RegExp(guid, 'g'))).size).toBe(1);
  });

  it('keeps any language in the name of the share', () => {
    const bytes = registryBytes(String.raw`\\Zürich\Überwachung`);
    expect([...bytes.slice(0, 2)]).toEqual([0xff, 0xfe]);
    const text = new TextDecoder('utf-16le').decode(bytes);
    expect(text).toContain(String.raw`"Url"="\\\\Zürich\\Überwachung"`);
    expect(text.replaceAll('\r\n', '')).not.toContain('\n');
  });

  it.each([String.raw`\\files\addins`, String.raw`\\files\team\addins`])('takes the share %s', (share) => {
    expect(parseOptions(['--share', share])).toEqual({ share });
    expect(parseOptions(['--share', `${share}\\`])).toEqual({ share });
  });

  it.each([
    String.raw`C:\addins`,
    String.raw`\\files`,
    '/addins',
    String.raw`\\files\a"b`,
    '\\\\files\\a\nb',
    '',
  ])('refuses %j as a share', (share) => {
    expect(() => parseOptions([`--share=${share}`])).toThrow(/network path/);
  });

  /** Folder: Microsoft, "Sideload Office Add-ins on Mac for testing". */
  it('names the folder that Excel on a Mac reads', () => {
    expect(macFolder('/Users/me').replaceAll('\\', '/')).toBe(
      '/Users/me/Library/Containers/com.microsoft.Excel/Data/Documents/wef',
    );
  });

  it('says what to do for each kind of Excel', () => {
    const text = steps('/a/manifest.xml', 'https://host.example/tripdrift');
    for (const said of [
      'Windows',
      'Mac',
      'on the web',
      '/a/manifest.xml',
      'https://host.example/tripdrift/',
    ]) {
      expect(text).toContain(said);
    }
  });
});
