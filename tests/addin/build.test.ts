import { mkdtempSync, readFileSync, readdirSync, rmSync, statSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { dirname, join, sep } from 'node:path';
import vm from 'node:vm';
import { SaxesParser } from 'saxes';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { builtFiles, buildAddin } from '../../src/tools/addin/main.ts';
import { AUDIT_COMMAND } from '../../src/addin/commands.ts';
import { checkManifest } from '../../src/tools/manifest/check.ts';
import { catalogue } from '../../src/functions/catalogue.ts';
import { loadOffice } from '../office/load.ts';
import { LIMITS, packedSizes } from './packedSizes.ts';

const ADDRESS = 'https://host.example/tools/tripdrift';
const OFFICE = join(dirname(createRequire(import.meta.url).resolve('@microsoft/office-js/package.json')));
const own = mkdtempSync(join(tmpdir(), 'tripdrift-build-'));
const cdn = mkdtempSync(join(tmpdir(), 'tripdrift-build-'));

const text = (folder: string, file: string) => readFileSync(join(folder, file), 'utf8');

function filesOf(folder: string): string[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((file) => statSync(join(folder, file)).isFile())
    .map((file) => file.split(sep).join('/'));
}

/** Elements of a page with their attributes and the text inside them; our pages are well-formed enough once closed. */
function elements(html: string, name: string): { attributes: Record<string, string>; inside: string }[] {
  return [...html.matchAll(new RegExp(`<${name}\\b([^>]*)>(?:([\\s\\S]*?)</${name}>)?`, 'g'))].map(
    (found) => {
      const attributes: Record<string, string> = {};
      const parser = new SaxesParser({ fragment: true });
      parser.on('opentag', (tag) => Object.assign(attributes, tag.attributes));
      parser
        .write(`<x ${(found[1] ?? '').replace(/\/$/, '').replaceAll(/ (crossorigin|defer)(?!=)/g, '')}/>`)
        .close();
      return { attributes, inside: found[2] ?? '' };
    },
  );
}

beforeAll(async () => {
  await buildAddin(own, { address: ADDRESS, cdn: false });
  await buildAddin(cdn, { address: ADDRESS, cdn: true });
}, 120_000);

afterAll(() => {
  for (const folder of [own, cdn]) rmSync(folder, { recursive: true, force: true });
});

describe('the built add-in', () => {
  it('answers every address of its manifest', () => {
    for (const folder of [own, cdn]) {
      expect(checkManifest(text(folder, 'manifest.xml'), builtFiles(folder, ADDRESS))).toEqual([]);
    }
  });

  it('names no other host than the one it is built for in its manifest', () => {
    const hosts = text(own, 'manifest.xml').matchAll(/DefaultValue="https:\/\/([^/"]+)/g);
    expect(new Set([...hosts].map(([, host]) => host))).toEqual(new Set(['host.example']));
  });

  it('holds the files of Office.js unchanged, their licence beside them', () => {
    const copied = filesOf(join(own, 'office')).filter((file) => file !== 'LICENSE.md');
    expect(copied).toContain('office.js');
    expect(copied).toContain('excel-win32-16.01.js');
    expect(copied).toContain('de-de/office_strings.js');
    for (const file of copied) {
      expect(
        readFileSync(join(own, 'office', file)).equals(readFileSync(join(OFFICE, 'dist', file))),
        file,
      ).toBe(true);
    }
    expect(text(own, 'office/LICENSE.md')).toBe(text(OFFICE, 'LICENSE.md'));
    expect(text(own, 'THIRD-PARTY-NOTICES.txt')).toContain(
      'Microsoft is not responsible for maintaining or supporting Tripdrift.',
    );
  });

  it('names the licence of every package in its scripts', () => {
    const notices = text(own, 'THIRD-PARTY-NOTICES.txt');
    for (const name of ['mathjs', 'preact', 'zod', 'typed-function']) {
      expect(notices).toMatch(new RegExp(`^${name} \\d+\\.\\d+\\.\\d+`, 'm'));
    }
  });

  it('holds none of Office.js where it is taken from Microsoft', () => {
    expect(filesOf(cdn).filter((file) => file.startsWith('office/'))).toEqual([]);
    const [script] = elements(text(cdn, 'taskpane.html'), 'script');
    expect(script?.attributes['src']).toBe('https://appsforoffice.microsoft.com/lib/1/hosted/office.js');
  });

  /** W3C, Content Security Policy 3: without 'unsafe-inline' neither scripts nor styles may stand in a page. */
  it.each(['taskpane.html', 'help.html'])('%s states a strict policy and keeps it', (page) => {
    const html = text(own, page);
    const [policy] = elements(html, 'meta').filter(({ attributes }) => 'http-equiv' in attributes);
    expect(policy?.attributes['content']).toContain(
      "default-src 'none'; script-src 'self'; style-src 'self';",
    );
    expect(policy?.attributes['content']).not.toMatch(/unsafe|https?:|\*/);
    for (const { attributes, inside } of elements(html, 'script')) {
      expect(attributes['src']).toMatch(/^(\.\/)?[\w./-]+\.js$/);
      expect(inside).toBe('');
    }
    expect(elements(html, 'style')).toEqual([]);
    expect(html).not.toMatch(/<[^>]+\s(style|on\w+)=/);
  });

  it('allows Microsoft as the only other host, and only where its Office.js is used', () => {
    const [policy] = elements(text(cdn, 'taskpane.html'), 'meta');
    expect(policy?.attributes['content']?.match(/https:\S+?(?=[;\s])/g)).toEqual([
      'https://appsforoffice.microsoft.com',
    ]);
  });

  it.each(['taskpane.html', 'help.html'])('%s links to nothing that is not there', (page) => {
    const html = text(own, page);
    const links = [...elements(html, 'link'), ...elements(html, 'script'), ...elements(html, 'a')].map(
      ({ attributes }) => attributes['href'] ?? attributes['src'] ?? '',
    );
    expect(links).not.toHaveLength(0);
    const ids = new Set([...html.matchAll(/ id="([^"]+)"/g)].map(([, id]) => `#${id ?? ''}`));
    const dead = links.filter((link) =>
      link.startsWith('#')
        ? !ids.has(link)
        : builtFiles(own, ADDRESS)(new URL(link, `${ADDRESS}/`).href) === undefined,
    );
    expect(dead).toEqual([]);
  });

  it('is small', () => {
    const { functions, pane } = packedSizes(own);
    expect(functions).toBeLessThan(LIMITS.functions);
    expect(pane).toBeLessThan(LIMITS.pane);
  });

  it('explains every function at the address that its description gives to Excel', () => {
    const file = filesOf(own).find((name) => /^functions\.[\da-f]{8}\.json$/.test(name)) ?? '';
    const { functions } = JSON.parse(text(own, file)) as { functions: { id: string; helpUrl: string }[] };
    expect(functions).toHaveLength(catalogue.length);
    const help = text(own, 'help.html');
    for (const { id, helpUrl } of functions) {
      expect(helpUrl).toBe(`${ADDRESS}/help.html#${id.toLowerCase()}`);
      expect(help).toContain(`<h3 id="${id.toLowerCase()}">${id}</h3>`);
    }
  });

  it('registers every function and the ribbon command with the real Office.js as soon as its script runs', () => {
    const page = loadOffice();
    vm.runInContext(text(own, 'functions.js'), page);
    const { CustomFunctions, Office } = page as unknown as Record<
      'CustomFunctions' | 'Office',
      Record<string, unknown>
    >;
    const functions = CustomFunctions['_association'] as {
      mappings: Record<string, (...given: unknown[]) => unknown>;
    };
    expect(Object.keys(functions.mappings).sort()).toEqual(catalogue.map(({ id }) => id).sort());
    // 5 mil × 200 / 160: the definition of the effective threshold, worked by hand.
    expect(JSON.stringify(functions.mappings['EFFECTIVE']?.([[5]], [[200]], [[160]]))).toBe('[[6.25]]');
    const actions = (Office['actions'] as Record<string, unknown>)['_association'] as { mappings: object };
    expect(Object.keys(actions.mappings)).toContain(AUDIT_COMMAND.toUpperCase());
  });
});
