// The package that `npm pack` makes, installed with no network into an empty folder, where nothing but Node is.
import { spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import {
  cpSync,
  existsSync,
  mkdirSync,
  readFileSync,
  readdirSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { join, resolve } from 'node:path';
import process from 'node:process';
import { beforeAll, describe, expect, test } from 'vitest';
import { demo, runAudit, temporaryFolder } from './run.ts';

const root = resolve(import.meta.dirname, '../..');
const folder = temporaryFolder();
const checkout = join(folder, 'checkout');
const place = join(folder, 'place');
const installed = join(place, 'node_modules/tripdrift');
const onlyNode = join(folder, 'path');

function npm(cwd: string, ...args: string[]) {
  const env = {
    ...process.env,
    npm_config_registry: 'http://127.0.0.1:9/',
    npm_config_update_notifier: 'false',
  };
  const { status, stderr } = spawnSync('npm', args, { cwd, encoding: 'utf8', env });
  expect({ status, stderr: status === 0 ? '' : stderr }).toEqual({ status: 0, stderr: '' });
}

const bare = { cwd: place, env: { PATH: onlyNode }, encoding: 'utf8' } as const;

/** Runs the installed command where the path leads to Node and to nothing else. */
function tripdrift(...args: string[]) {
  const { status, stdout, stderr } = spawnSync('node_modules/.bin/tripdrift', args, bare);
  return { code: status, out: stdout, err: stderr };
}

beforeAll(() => {
  for (const path of [checkout, place, onlyNode]) mkdirSync(path, { recursive: true });
  for (const name of ['src', 'workbooks', 'package.json', 'package-lock.json', 'LICENSE', 'README.md'])
    cpSync(join(root, name), join(checkout, name), { recursive: true });
  symlinkSync(join(root, 'node_modules'), join(checkout, 'node_modules'));
  symlinkSync(process.execPath, join(onlyNode, 'node'));
  npm(checkout, 'pack', '--silent', '--pack-destination', folder);
  const [tarball = ''] = readdirSync(folder).filter((name) => name.endsWith('.tgz'));
  writeFileSync(join(place, 'package.json'), '{}');
  const cache = join(folder, 'cache');
  npm(place, 'install', '--offline', '--no-audit', '--no-fund', '--cache', cache, join(folder, tarball));
}, 300_000);

describe('the package', () => {
  test('brings all that it needs and asks for no other', () => {
    expect(readdirSync(join(place, 'node_modules')).filter((name) => !name.startsWith('.'))).toEqual([
      'tripdrift',
    ]);
    const { dependencies, private: isPrivate } = JSON.parse(
      readFileSync(join(installed, 'package.json'), 'utf8'),
    ) as Record<string, unknown>;
    expect({ dependencies, isPrivate }).toEqual({ dependencies: undefined, isPrivate: true });
    expect(existsSync(join(installed, 'src'))).toBe(false);
  });

  test('leaves the checkout’s package.json as it was', () => {
    expect(readFileSync(join(checkout, 'package.json'))).toEqual(readFileSync(join(root, 'package.json')));
    expect(readdirSync(checkout).filter((name) => name.startsWith('package.'))).toEqual(['package.json']);
  });

  test('audits the demo it brings', () => {
    const { code, out, err } = tripdrift('audit', join(installed, 'workbooks/harbour-station.xlsx'));
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(out).toBe(runAudit(folder, demo).out);
    const strict = tripdrift(
      'audit',
      join(installed, 'workbooks/harbour-station.xlsx'),
      '--strict',
      '--out',
      'out.xlsx',
    );
    expect(strict.code).toBe(1);
    expect(tripdrift('audit', '--verify', 'out.xlsx').code).toBe(0);
  });

  test('audits a folder', () => {
    const { code, out } = tripdrift('audit', join(installed, 'workbooks'), '--json', '-');
    const { files } = JSON.parse(out) as { files: readonly { file: string; refused: string | null }[] };
    expect(files.map(({ file, refused }) => [file, refused])).toContainEqual(['harbour-station.xlsx', null]);
    expect(code).toBe(files.every(({ refused }) => refused === null) ? 0 : 2);
  });

  test('works out a formula', () => {
    expect(tripdrift('calc', '=TRIPDRIFT.EFFECTIVE(5,200,160)')).toEqual({ code: 0, out: '6.25\n', err: '' });
  });

  test('says what it can do, and refuses what it can not in one line', () => {
    const { code, out } = tripdrift();
    expect(code).toBe(0);
    for (const name of ['audit', 'calc', 'bench']) expect(out).toContain(`tripdrift ${name}`);
    const odd = tripdrift('aduit', 'x.xlsx');
    expect(odd).toEqual({
      code: 2,
      out: '',
      err: "'aduit' is no command: choose audit, calc or bench. See --help.\n",
    });
    expect(tripdrift('bench', '--port', 'x').code).toBe(2);
    expect(tripdrift('audit', '--help').out).toContain('\n  tripdrift audit IN.xlsx [options]\n');
    expect(tripdrift('calc', '--help').out).toContain("\n  tripdrift calc '=TRIPDRIFT.EFFECTIVE");
  });

  test('serves the bench with its page, its demo and the licences of what is in it', async () => {
    const server = spawn('node_modules/.bin/tripdrift', ['bench', '--port', '0', '--no-open'], bare);
    try {
      const [said] = (await once(server.stdout, 'data')) as [Buffer];
      const address = /http:\S+/u.exec(said.toString())?.[0] ?? '';
      const page = await fetch(address);
      expect(page.headers.get('content-security-policy')).toContain("default-src 'none'");
      const script = /src="\.\/(assets\/[^"]+\.js)"/u.exec(await page.text())?.[1] ?? '';
      expect((await fetch(address + script)).status).toBe(200);
      const workbook = await (await fetch(`${address}harbour-station.xlsx`)).arrayBuffer();
      expect(Buffer.from(workbook)).toEqual(readFileSync(demo));
      expect(await (await fetch(`${address}THIRD-PARTY-NOTICES.txt`)).text()).toMatch(
        /^@univerjs\/core \d/mu,
      );
    } finally {
      server.kill();
    }
  });
});

describe.each([
  [
    'the command',
    'dist/THIRD-PARTY-NOTICES.txt',
    ['Tripdrift', 'mathjs', 'saxes', 'zod', '@borgar/fx', 'fflate'],
  ],
  [
    'the bench',
    'dist/bench/THIRD-PARTY-NOTICES.txt',
    ['Tripdrift', '@univerjs/core', '@univerjs/protocol', 'react', 'rxjs', 'saxes'],
  ],
])('the licences of %s', (_name, file, names) => {
  test('name each package and hold each text once', () => {
    const text = readFileSync(join(installed, file), 'utf8');
    for (const name of names) expect(text).toMatch(new RegExp(`^${name} \\d+\\.\\d+\\.\\d+$`, 'mu'));
    const flat = text.replaceAll(/\s+/gu, ' ');
    for (const words of [
      'TERMS AND CONDITIONS FOR USE, REPRODUCTION, AND DISTRIBUTION',
      'Permission is hereby granted, free of charge, to any person obtaining a copy',
      'Permission to use, copy, modify, and/or distribute this software for any purpose with or without fee is hereby granted, provided',
    ])
      expect(flat.split(words), words).toHaveLength(2);
  });
});
