import { describe, expect, it } from 'vitest';
import { parseAddress } from '../../src/tools/addin/address.ts';
import { builtFiles } from '../../src/tools/addin/main.ts';
import { parseOptions } from '../../src/tools/addin/options.ts';

describe('the address to build for', () => {
  it.each([
    ['https://host.example', 'https://host.example'],
    ['https://host.example/', 'https://host.example'],
    ['https://HOST.example:8443/tools/tripdrift/', 'https://host.example:8443/tools/tripdrift'],
    ['https://host.example:443/a', 'https://host.example/a'],
  ])('%s is %s', (given, address) => {
    expect(parseAddress(given)).toBe(address);
  });

  it.each(['host.example', 'http://host.example', 'ftp://host.example', '', 'https://', '/tripdrift'])(
    '%j is refused: no https address',
    (given) => {
      expect(() => parseAddress(given)).toThrow(/full https address/);
    },
  );

  it.each(['https://me@host.example', 'https://host.example/?a', 'https://host.example/#a'])(
    '%s is refused: more than an address',
    (given) => {
      expect(() => parseAddress(given)).toThrow(/leave out/);
    },
  );

  it('is localhost, with our own copy of Office.js, where nothing is said', () => {
    expect(parseOptions([])).toEqual({ address: 'https://localhost:3443', cdn: false });
  });

  it('comes from the options', () => {
    const options = parseOptions(['--origin', 'https://host.example/tripdrift', '--cdn']);
    expect(options).toEqual({ address: 'https://host.example/tripdrift', cdn: true });
    expect(() => parseOptions(['--orgin', 'https://host.example'])).toThrow(/orgin/);
    expect(() => parseOptions(['https://host.example'])).toThrow(/host\.example/);
  });
});

describe('files by their address', () => {
  const file = builtFiles(import.meta.dirname, 'https://host.example/tripdrift');

  it('answers below its own path alone', () => {
    expect(file('https://host.example/tripdrift/address.test.ts')).toBeDefined();
    expect(file('https://host.example/address.test.ts')).toBeUndefined();
    expect(file('https://elsewhere.example/tripdrift/address.test.ts')).toBeUndefined();
    expect(file('https://host.example/tripdrift/nothing.ts')).toBeUndefined();
    expect(file('https://host.example/tripdrift/')).toBeUndefined();
    expect(file('https://host.example/tripdrift/%2e%2e/libreoffice.ts')).toBeUndefined();
  });
});
