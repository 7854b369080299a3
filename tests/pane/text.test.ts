import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it, vi } from 'vitest';
import { AuditRefused } from '../../src/audit/model/refused.ts';
import { ASKED } from '../../src/addin/commands.ts';
import { surroundings } from '../../src/pane/app/startup.ts';
import { shownText, plainMessage } from '../../src/pane/parts/shownText.ts';

const source = join(import.meta.dirname, '..', '..', 'src', 'pane');
const files = readdirSync(source, { recursive: true, encoding: 'utf8' })
  .filter((name) => /\.tsx?$/u.test(name))
  .map((name) => ({ name, text: readFileSync(join(source, name), 'utf8') }));

/** Every way of the DOM and of the UI library to make elements or code from text. */
const textToPage =
  /innerHTML|outerHTML|insertAdjacentHTML|dangerouslySetInnerHTML|createContextualFragment|DOMParser|document\.write|srcdoc|\beval\b|new Function|javascript:/u;

describe('text from cells', () => {
  it('is never made into elements or code', () => {
    expect(files.length).toBeGreaterThan(20);
    expect(files.filter(({ text }) => textToPage.test(text)).map(({ name }) => name)).toEqual([]);
    expect(textToPage.test('<b dangerouslySetInnerHTML={{ __html: x }} />')).toBe(true);
  });

  it('shows marks of direction by their names', () => {
    // Names and code points: Unicode Standard Annex 9, section 2.
    expect(shownText('\u202Egnp.exe\u202C', 100)).toBe('[RLO]gnp.exe[PDF]');
    expect(shownText('a\u2067b\u2069\u200Fc\u061Cd', 100)).toBe('a[RLI]b[PDI][RLM]c[ALM]d');
  });

  it('keeps letters of every script, and shows control characters as spaces', () => {
    expect(shownText('وسم\tA\r\nB\u0000C 日本 🙂', 100)).toBe('وسم A B C 日本 🙂');
  });

  it('cuts a long text and says how long it is', () => {
    const shown = shownText('W'.repeat(32_767), 50);
    expect(shown).toBe(`${'W'.repeat(50)}… (32767 characters)`);
  });
});

describe('messages', () => {
  it('of a refusal stand as they are; anything else is called a fault of ours', () => {
    expect(plainMessage(new AuditRefused('No channel list was found.'))).toBe('No channel list was found.');
    expect(plainMessage(new TypeError('x is undefined'))).toContain('fault of Tripdrift: x is undefined');
  });
});

describe('start', () => {
  it('tells a plain browser, Excel and another program apart', async () => {
    const office = (host: unknown) => ({ onReady: () => Promise.resolve({ host }) });
    const silent = vi.fn();
    expect(await surroundings(undefined, silent)).toBe('browser');
    expect(await surroundings(office(null), silent)).toBe('browser');
    expect(await surroundings(office('Excel'), silent)).toBe('excel');
    expect(await surroundings(office('Word'), silent)).toBe('another program');
    expect(silent).not.toHaveBeenCalled();
  });

  it('says so when Excel does not answer, and goes on waiting', async () => {
    vi.useFakeTimers();
    const silent = vi.fn();
    let answer: (info: { host: unknown }) => void = () => undefined;
    const waiting = surroundings({ onReady: () => new Promise((resolve) => (answer = resolve)) }, silent);
    vi.advanceTimersByTime(60_000);
    expect(silent).toHaveBeenCalledTimes(1);
    vi.useRealTimers();
    answer({ host: 'Excel' });
    expect(await waiting).toBe('excel');
  });

  it('listens for the wish that the ribbon tells by', () => {
    expect(files.find(({ name }) => name.endsWith('App.tsx'))?.text).toContain(`'${ASKED}'`);
  });
});
