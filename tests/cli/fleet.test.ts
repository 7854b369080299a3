import {
  copyFileSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  readdirSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { join, resolve } from 'node:path';
import process from 'node:process';
import { unzipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import type { Report } from '../../src/audit/model/report.ts';
import { auditCommand } from '../../src/cli/audit/command.ts';
import { UsageRefused } from '../../src/cli/refused.ts';
import { readWorkbook } from '../../src/hosts/file/read/workbook.ts';
import { newWorkbook } from '../../src/hosts/file/write/newWorkbook.ts';
import { stationSheets } from '../bench/station.ts';
import { objectionsTo } from '../openXmlValidator.ts';
import { demo, runAudit, temporaryFolder, type Ran } from './run.ts';
import { endOf, runFleet, startAudit } from './runFleet.ts';
import { smallWorkbook } from './smallWorkbook.ts';

const folder = temporaryFolder();
const template = resolve(import.meta.dirname, '../../workbooks/template.xlsx');

/** Worked by hand: 5 mil · 200/160 = 6.25 mil, 25 % late; 200/201 is within 5 %. */
const late = smallWorkbook([
  { tag: 'L-1', machine: 'Fan', measured: 160 },
  { tag: 'L-2', machine: 'Fan', measured: 201 },
  { tag: 'L-3', machine: 'Pump', measured: 201 },
]);
const sound = smallWorkbook([{ tag: 'S-1', machine: 'Fan', measured: 201 }]);

function newFolder(files: Readonly<Record<string, Uint8Array | string>>): string {
  const path = mkdtempSync(join(folder, 'plant-'));
  for (const [name, content] of Object.entries(files)) writeFileSync(join(path, name), content);
  return path;
}

/** As office programs keep a workbook with a password: an OLE container whose streams are named in UTF-16. */
function withPassword(): Uint8Array {
  const bytes = new Uint8Array(4096);
  bytes.set([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1]);
  bytes.set(Buffer.from('EncryptedPackage', 'utf16le'), 1024);
  return bytes;
}

interface FleetDocument {
  readonly schema: string;
  readonly generated: string;
  readonly files: readonly { file: string; report: Report | null; refused: string | null }[];
  readonly leftOut: readonly string[];
}

function oneLine({ code, out, err }: Ran): void {
  expect({ code, out }).toEqual({ code: 2, out: '' });
  expect(err.trimEnd()).not.toContain('\n');
  expect(err).not.toMatch(/unexpectedly|\bat .*:\d+:\d+/u);
}

/** What the command refuses with, in this process: nothing is started then. */
async function refusal(args: readonly string[]): Promise<string> {
  const refused: unknown = await auditCommand(args).catch((error: unknown) => error);
  expect(refused).toBeInstanceOf(UsageRefused);
  const { message } = refused as UsageRefused;
  expect(message).not.toContain('\n');
  return message;
}

const unfinished = (path: string) =>
  existsSync(path) ? readdirSync(path).filter((name) => name.endsWith('.part')) : [];

describe('the audit of a folder', () => {
  const mixed = newFolder({
    'Unit 10.xlsx': late,
    'Unit 9.xlsx': sound,
    'broken.xlsx': readFileSync(demo).subarray(0, 9000),
    'empty.xlsx': '',
    'locked.xlsx': withPassword(),
    'text.xlsx': 'Tag,Danger\nX-1,5\n',
    'none.xlsx': newWorkbook([
      {
        name: 'Sheet1',
        widths: [],
        styles: {},
        formulas: [],
        rowCount: 0,
        rows: () => [],
        print: { landscape: true },
      },
    ]),
    '~$Unit 9.xlsx': 'lock',
    '.~lock.Unit 10.xlsx#': 'lock',
    '._Unit 10.xlsx': 'hidden',
    'list.csv': 'Tag\n',
    'old.xls': 'old',
    'notes.txt.docx': '',
  });
  copyFileSync(demo, join(mixed, 'demo.xlsx'));
  copyFileSync(template, join(mixed, 'template.xlsx'));
  mkdirSync(join(mixed, 'archive'));
  const before = new Map(
    readdirSync(mixed, { withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map(({ name }) => [name, readFileSync(join(mixed, name))]),
  );

  test('writes a copy of each workbook that it can read, says why not of the others, and changes none', async () => {
    const { code, out, err } = await runFleet(mixed, '.', '--out', 'results');
    expect({ code, err }).toEqual({ code: 2, err: '' });
    const lines = out.split('\n');
    const from = lines.findIndex((line) => line.startsWith('workbook '));
    expect(lines.slice(from + 1, from + 11).map((line) => line.split(/ {2,}/u).slice(0, 2))).toEqual([
      ['broken.xlsx', 'not audited'],
      ['demo.xlsx', '59'],
      ['empty.xlsx', 'not audited'],
      ['locked.xlsx', 'not audited'],
      ['none.xlsx', 'not audited'],
      ['template.xlsx', '0'],
      ['text.xlsx', 'not audited'],
      ['Unit 9.xlsx', '1'],
      ['Unit 10.xlsx', '3'],
      ['all workbooks', '63'],
    ]);
    const flat = out.replace(/\s+/gu, ' ');
    expect(flat).toContain('5 of 9 workbooks could not be audited');
    expect(flat).toContain('locked.xlsx: The workbook is protected by a password. Remove the password');
    expect(flat).toContain('empty.xlsx: The file is empty.');
    for (const name of ['archive', 'list.csv', 'old.xls', 'notes.txt.docx', '._Unit 10.xlsx']) {
      expect(flat.slice(flat.indexOf('Left out'))).toContain(name);
    }
    expect(flat).toContain('what is not saved there is not audited: Unit 10.xlsx, Unit 9.xlsx.');
    expect(flat).not.toContain(': archive, results');
    expect(flat).toContain('Advisory only.');

    const results = join(mixed, 'results');
    expect(readdirSync(results).sort()).toEqual([
      'Fleet summary.xlsx',
      'Unit 10.xlsx',
      'Unit 9.xlsx',
      'demo.xlsx',
      'template.xlsx',
    ]);
    for (const [name, bytes] of before) expect(readFileSync(join(mixed, name)).equals(bytes)).toBe(true);
    const copy = readWorkbook('Unit 10.xlsx', readFileSync(join(results, 'Unit 10.xlsx')));
    expect(copy.sheets.map(({ name }) => name)).toContain('Audit summary');
    const summary = readWorkbook('Fleet summary.xlsx', readFileSync(join(results, 'Fleet summary.xlsx')));
    expect(summary.sheets.map(({ name }) => name)).toEqual(['Fleet summary']);
    expect(summary.sheets[0]?.rows[0]?.[0]).toBe('Tripdrift audit – fleet');
    const row = summary.sheets[0]?.rows.find(([first]) => first === 'Unit 10.xlsx');
    // Workbook, worst, channels, cannot act, late, uncertain, early, not known, OK, in bypass, groups, not read, critical.
    expect(row?.slice(0, 13)).toEqual(['Unit 10.xlsx', 'late', 3, 0, 1, 0, 0, 0, 2, 0, 0, 0, 1]);
    expect(row?.[13]).toBe('L-1 danger is late: set 5, really trips at 6.25 mil.');
    expect(objectionsTo(join(results, 'Fleet summary.xlsx'))).toEqual([]);
    expect(unfinished(results)).toEqual([]);
  });

  test('--json - prints one document with the report of each, and nothing else', async () => {
    const plant = newFolder({ 'b.xlsx': late, 'a.xlsx': 'text', 'c.XLSX': sound });
    const { code, out, err } = await runFleet(folder, plant, '--json', '-');
    expect({ code, err }).toEqual({ code: 2, err: '' });
    const document = JSON.parse(out) as FleetDocument;
    expect(document.schema).toBe('tripdrift-fleet/1');
    expect(document.files.map(({ file }) => file)).toEqual(['a.xlsx', 'b.xlsx', 'c.XLSX']);
    const [a, b, c] = document.files;
    expect(a?.report).toBeNull();
    expect(a?.refused).toContain('not an .xlsx workbook');
    expect(b?.refused).toBeNull();
    // The report of a workbook in a fleet is the report of the workbook alone, but for its time.
    const alone = JSON.parse(runAudit(plant, 'b.xlsx', '--json', '-').out) as Report;
    expect({ ...b?.report, generated: '' }).toEqual({ ...alone, generated: '' });
    expect(b?.report?.generated).toBe(document.generated);
    expect(c?.report?.summary).toMatchObject({ channels: 1, within: 1 });
    expect(readdirSync(plant).sort()).toEqual(['a.xlsx', 'b.xlsx', 'c.XLSX']);
  });

  test('--json FILE may lie among the copies, and is written anew only over its own kind', async () => {
    const plant = newFolder({ 'a.xlsx': sound });
    expect((await runFleet(plant, '.', '--out', 'out', '--json', 'out/fleet.json')).code).toBe(0);
    const document = JSON.parse(readFileSync(join(plant, 'out/fleet.json'), 'utf8')) as FleetDocument;
    expect(document.files).toHaveLength(1);
    expect((await runFleet(plant, '.', '--json', 'out/fleet.json')).code).toBe(0);
    writeFileSync(join(plant, 'mine.json'), '{}');
    expect(await refusal([plant, '--json', join(plant, 'mine.json')])).toContain('mine.json exists');
  });

  test('the exit code is 0 where all is audited, and with --strict 1 where something was found', async () => {
    const bad = newFolder({ 'a.xlsx': sound, 'b.xlsx': late });
    expect((await runFleet(bad, '.')).code).toBe(0);
    expect((await runFleet(bad, '.', '--strict')).code).toBe(1);
    const good = newFolder({ 'a.xlsx': sound });
    expect((await runFleet(good, '.', '--strict')).code).toBe(0);
    writeFileSync(join(bad, 'c.xlsx'), 'text');
    expect((await runFleet(bad, '.', '--strict')).code).toBe(2);
  });

  test('policy and column map hold for all of them', async () => {
    const plant = newFolder({ 'a.xlsx': late, 'b.xlsx': late, 'wide.json': '{"tolerance": 0.3}' });
    const { out } = await runFleet(plant, '.', '--policy', 'wide.json', '--json', '-');
    const { files } = JSON.parse(out) as FleetDocument;
    expect(files.map(({ report }) => report?.summary.within)).toEqual([3, 3]);
    writeFileSync(join(plant, 'map.json'), '{"channels": {"columns": {"measured sensitivity": "Q"}}}');
    const mapped = JSON.parse(
      (await runFleet(plant, '.', '--map', 'map.json', '--json', '-')).out,
    ) as FleetDocument;
    for (const { refused } of mapped.files) expect(refused).toContain('Q');
  });

  test('existing copies are replaced with --force only, and nothing is written before that is known', async () => {
    const plant = newFolder({ 'a.xlsx': late, 'b.xlsx': sound });
    mkdirSync(join(plant, 'out'));
    writeFileSync(join(plant, 'out', 'b.xlsx'), 'mine');
    expect(await refusal([plant, '--out', join(plant, 'out')])).toMatch(/b\.xlsx exists\. .*--force/u);
    expect(readdirSync(join(plant, 'out'))).toEqual(['b.xlsx']);
    expect((await runFleet(plant, '.', '--out', 'out', '--force')).code).toBe(0);
    expect(readFileSync(join(plant, 'out', 'b.xlsx'), 'latin1').slice(0, 2)).toBe('PK');
    expect(await refusal([plant, '--out', join(plant, 'out')])).toContain('and 2 more files exist');
  });

  test('two runs give the same files but for their times and what follows from those', async () => {
    const plant = newFolder({ 'a.xlsx': late, 'b.xlsx': sound });
    copyFileSync(demo, join(plant, 'demo.xlsx'));
    const [one, two] = [newFolder({}), newFolder({})];
    for (const out of [one, two]) await runFleet(plant, '.', '--out', out, '--force');
    expect(readdirSync(one)).toHaveLength(4);
    for (const name of readdirSync(one)) {
      const [first, second] = [one, two].map((out) => timeless(join(out, name)));
      expect(Object.keys(first ?? {})).toEqual(Object.keys(second ?? {}));
      const differ = Object.keys(first ?? {}).filter((part) => first?.[part] !== second?.[part]);
      expect(differ).toEqual([]);
    }
  });

  test('an input of the summary’s name keeps it', async () => {
    const plant = newFolder({ 'fleet summary.xlsx': sound });
    const { code, out } = await runFleet(plant, '.', '--out', 'out');
    expect(code).toBe(0);
    expect(out).toContain("'Fleet summary (2).xlsx' (one of the inputs is named 'Fleet summary.xlsx')");
    expect(readdirSync(join(plant, 'out')).sort()).toEqual(['Fleet summary (2).xlsx', 'fleet summary.xlsx']);
  });

  test('what stands in a copy otherwise than expected is said', async () => {
    const plant = newFolder({ 'a.xlsx': sound });
    await runFleet(plant, '.', '--out', 'out');
    const { out } = await runFleet(plant, 'out', '--out', 'again');
    expect(out.replace(/\s+/gu, ' ')).toContain(
      "a.xlsx: New sheet 'Audit summary (2)' (there is a 'Audit summary' already).",
    );
  });

  test('bad usage is one line and nothing is written', async () => {
    const plant = newFolder({ 'a.xlsx': sound, 'file.txt': '' });
    mkdirSync(join(plant, 'bare'));
    symlinkSync(plant, join(plant, 'same'));
    symlinkSync(join(plant, 'a.xlsx'), join(plant, 'bare', 'link.xlsx'));
    mkdirSync(join(plant, 'linked'));
    symlinkSync(join(plant, 'linked', 'b.xlsx'), join(plant, 'b.xlsx'));
    writeFileSync(join(plant, 'linked', 'b.xlsx'), sound);
    const listed = readdirSync(plant, { recursive: true });
    const at = (name: string) => join(plant, name);
    const calls: [string[], string][] = [
      [[plant, '--out', plant], 'the folder of the inputs'],
      [[plant, '--out', at('same'), '--force'], 'the folder of the inputs'],
      [[plant, '--out', at('linked'), '--force'], 'b.xlsx is an input'],
      [[plant, '--out', at('file.txt')], 'is a file'],
      [[plant, '--out', at('nowhere/deeper')], 'does not exist'],
      [[plant, '--out', at('new'), '--json', at('new/a.xlsx')], 'Name the file .json'],
      [[plant, '--json', at('a.xlsx')], 'is an input'],
      [[plant, at('a.xlsx')], 'one folder'],
      [[plant, '--timeout', '0'], 'minutes above 0'],
      [[plant, '--timeout', 'soon'], 'minutes above 0'],
      [[plant, '--timeout', '1441'], 'up to 1440'],
      [[at('a.xlsx'), '--timeout', '5'], 'for a folder'],
      [[plant, '--policy', at('missing.json'), '--out', at('new')], 'there is no such file'],
      [[plant, '--out', at('new'), '--json', at('nowhere/x.json')], 'does not exist'],
    ];
    for (const [call, says] of calls) expect(await refusal(call)).toContain(says);
    expect(await refusal([newFolder({ 'list.csv': 'Tag\n' })])).toMatch(/no \.xlsx or \.xlsm .*list\.csv/u);
    oneLine(await runFleet(plant, '.', '--out', '.'));
    expect(readdirSync(plant, { recursive: true })).toEqual(listed);
  });

  test('a workbook that takes too long is given up, said, and leaves nothing', async () => {
    const plant = newFolder({ 'a.xlsx': sound, 'b.xlsx': late });
    const { code, out } = await runFleet(
      plant,
      '.',
      '--out',
      'out',
      '--json',
      'x.json',
      '--timeout',
      '0.0001',
    );
    expect(code).toBe(2);
    const flat = out.replace(/\s+/gu, ' ');
    expect(flat).toContain('b.xlsx: Given up after 0.0001 min. Allow more with --timeout MINUTES');
    expect(readdirSync(join(plant, 'out'))).toEqual(['Fleet summary.xlsx']);
    const { files } = JSON.parse(readFileSync(join(plant, 'x.json'), 'utf8')) as FleetDocument;
    expect(files.map(({ report }) => report)).toEqual([null, null]);
  });

  test('Ctrl-C ends every process and leaves no half file', async () => {
    const large = newWorkbook(stationSheets(8_000));
    const plant = newFolder({ 'a.xlsx': large, 'b.xlsx': large, 'c.xlsx': large });
    // Of its own: other programs may work in the machine's folder for temporary files at the same time.
    const temporary = newFolder({});
    const waitingReports = () => readdirSync(temporary).filter((name) => name.startsWith('tripdrift-fleet-'));
    const child = startAudit(plant, ['.', '--out', 'out', '--json', 'x.json'], temporary);
    const end = endOf(child);
    while (unfinished(join(plant, 'out')).length === 0 && child.exitCode === null) {
      await new Promise((again) => setTimeout(again, 5));
    }
    expect(waitingReports()).toHaveLength(1);
    process.kill(-(child.pid ?? 0), 'SIGINT');
    const { code, out, err } = await end;
    expect({ code, out }).toEqual({ code: 130, out: '' });
    expect(err).toMatch(/^Stopped after \d of 3 workbooks/u);
    expect(unfinished(join(plant, 'out'))).toEqual([]);
    expect(existsSync(join(plant, 'x.json'))).toBe(false);
    expect(waitingReports()).toEqual([]);
    // No process of the group is left.
    expect(() => process.kill(-(child.pid ?? 0), 0)).toThrow('ESRCH');
  });

  test('--help tells of folders', () => {
    const { out } = runAudit(folder, '--help');
    for (const word of ['FOLDER', '--timeout', 'could not be audited']) expect(out).toContain(word);
  });
});

/** The parts of a workbook as texts, without times, short ids and fingerprints, and the style that marks a text of digits. */
function timeless(file: string): Record<string, string> {
  const parts = Object.entries(unzipSync(readFileSync(file)));
  return Object.fromEntries(
    parts.map(([name, bytes]) => [
      name,
      Buffer.from(bytes)
        .toString('latin1')
        .replace(/\d{4}-\d\d-\d\d[T ]\d\d:\d\d(:[\d.]+Z| UTC)/gu, 'TIME')
        .replace(/\b[0-9a-f]{64}\b/gu, 'HASH')
        .replace(/\b[0-9a-f]{4}-[0-9a-f]{4}\b/gu, 'ID')
        .replace(/ s="\d+"/gu, ''),
    ]),
  );
}
