import { copyFileSync, existsSync, readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { Report } from '../../src/audit/model/report.ts';
import { readWorkbook } from '../../src/hosts/file/read/workbook.ts';
import { demo, runAudit, temporaryFolder } from './run.ts';

const folder = temporaryFolder();

function put(name: string, text: string): string {
  writeFileSync(join(folder, name), text);
  return name;
}

const channels = put('channels.csv', 'Tag,Measured sensitivity (mV/mil),Uncertainty (%)\nX-1,160,3\n');
const monitor = put(
  'monitor.csv',
  'Tag,Configured sensitivity (mV/mil),Alert (mil),Danger (mil)\nx-1 ,200,3,5\n',
);
const good = put('good.csv', 'Tag,Measured sensitivity (mV/mil)\nX-1,201\n');

function oneLine(text: string): void {
  expect(text.trimEnd()).not.toContain('\n');
  expect(text.trim()).not.toBe('');
  expect(text).not.toMatch(/\bat .*:\d+:\d+/u);
}

describe('the audit command', () => {
  test('tells what needs action worst first, what to do, the counts and the caution', () => {
    const { code, out, err } = runAudit(folder, demo);
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(out).toMatch(/\d+ things need action, \d+ of them critical\./u);
    expect(out).toContain(
      '59 channels: 5 cannot act, 6 late, 1 uncertain, 2 early, 30 OK; 14 not known, 1 in bypass.',
    );
    expect(out).toContain('6 channels were measured again after a correction: 2 corrected.');
    expect(out.indexOf('T101 thrust (2oo2) cannot trip')).toBeLessThan(out.indexOf('Not read'));
    expect(out).toContain('Before start-up: get this group able to trip again.');
    expect(out).toContain('--details lists them.');
    expect(out).toContain('Advisory only.');
    expect(out).not.toContain('\u001b');
  });

  // By hand: 4·200/161 = 4.969 and 4·200/161.5 = 4.954 mil.
  test('--details lists all that needs action, each channel as it was found and each rule', () => {
    const out = runAudit(folder, demo, '--details').out.replaceAll(/\s+/gu, ' ');
    expect(out).toContain('critical K101-1Y danger is late: set 4, really trips at 4.97 mil.');
    expect(out).toContain('critical K101-2X danger is late: set 4, really trips at 4.95 mil.');
    expect(out).toContain('K101-A1 (K-101 Gas compressor, thrust collar, probe 1): OK; as found late');
    expect(out).toMatch(/critical danger-late, Monitor settings!G\d+: /u);
    expect(out).not.toContain('--details');
  });

  test('--strict goes by how a channel was left: 1 where it was found right and left late', () => {
    const left = 'Tag,Measured sensitivity (mV/mil),As-left sensitivity (mV/mil)\nX-1,';
    put('left-late.csv', `${left}200,160\n`);
    put('left-right.csv', `${left}160,200\n`);
    expect(runAudit(folder, 'left-late.csv', monitor, '--strict').code).toBe(1);
    expect(runAudit(folder, 'left-right.csv', monitor, '--strict').code).toBe(0);
  });

  test('--strict is 1 for a danger in bypass, not known, and a column that was not read', () => {
    const settings = 'Tag,Configured sensitivity (mV/mil),Alert (mil),Danger (mil)';
    put('bypass.csv', `${settings},Bypass\nx-1,200,3,5,yes\n`);
    put('unclear.csv', `${settings},Bypass\nx-1,200,3,5,see permit\n`);
    put('slip.csv', `${settings},Full scael (mil)\nx-1,200,3,5,10\n`);
    put('early.csv', 'Tag,Measured sensitivity (mV/mil)\nX-1,260\n');
    for (const file of ['bypass.csv', 'unclear.csv', 'slip.csv']) {
      expect([file, runAudit(folder, good, file, '--strict').code]).toEqual([file, 1]);
    }
    const early = runAudit(folder, 'early.csv', monitor, '--strict');
    expect(early.code).toBe(0);
    expect(early.out).toContain('X-1 danger is early');
  });

  test('prints the report, and nothing else, for --json -: the contract’s own example', () => {
    const { code, out } = runAudit(folder, channels, monitor, '--json', '-');
    expect(code).toBe(0);
    const report = JSON.parse(out) as Report;
    expect(report.schema).toBe('tripdrift-report/2');
    const [channel] = report.channels;
    expect(channel?.sensitivity).toMatchObject({
      configured: 200,
      measured: 160,
      unit: 'mV/mil',
      uncertainty: 0.03,
    });
    const danger = channel?.thresholds.find((threshold) => threshold.name === 'danger');
    // Worked by hand: 5·200/160; 1000/(160·1.03); 1000/(160·0.97); 6.25 − 5; 200/160 − 1; 5·160/200.
    expect(danger).toMatchObject({
      setpoint: 5,
      multiplier: 1,
      effective: 6.25,
      shift: 1.25,
      shiftFraction: 0.25,
    });
    expect(danger?.low).toBeCloseTo(1000 / 164.8, 12);
    expect(danger?.high).toBeCloseTo(1000 / 155.2, 12);
    // By hand: 25·160·0.97/(5·200) = 3.88, at two digits towards the early side: 3.8.
    expect(danger).toMatchObject({
      verdict: 'late',
      indicatedAtSetpoint: 4,
      panel: 3.8,
      interimSetpoint: 3.8,
    });
    expect(danger?.probabilityBeyondLimit).toBeNull();
  });

  test('writes the same report to a file, anew over its own but not over another file', () => {
    expect(runAudit(folder, channels, monitor, '--json', 'report.json').code).toBe(0);
    expect(runAudit(folder, channels, monitor, '--json', 'report.json').code).toBe(0);
    expect((JSON.parse(readFileSync(join(folder, 'report.json'), 'utf8')) as Report).summary.late).toBe(1);
    put('mine.json', '{"mine": true}');
    const refused = runAudit(folder, channels, monitor, '--json', 'mine.json');
    expect(refused.code).toBe(2);
    expect(refused.err).toContain('mine.json exists');
    expect(readFileSync(join(folder, 'mine.json'), 'utf8')).toBe('{"mine": true}');
  });

  test('--strict is 1 where a danger is late and 0 where all is well', () => {
    expect(runAudit(folder, channels, monitor, '--strict').code).toBe(1);
    expect(runAudit(folder, good, monitor, '--strict').code).toBe(0);
    expect(runAudit(folder, demo, '--strict').code).toBe(1);
  });

  test('writes a copy with result sheets, never the input, and an existing copy only with --force', () => {
    copyFileSync(demo, join(folder, 'in.xlsx'));
    const before = readFileSync(join(folder, 'in.xlsx'));
    const first = runAudit(folder, 'in.xlsx', '--out', 'out.xlsx');
    expect(first.code).toBe(0);
    expect(first.out).toContain("Written: out.xlsx, with the sheets 'Audit summary', 'Audit results'");
    const names = readWorkbook('out.xlsx', readFileSync(join(folder, 'out.xlsx'))).sheets.map(
      (sheet) => sheet.name,
    );
    expect(names.slice(-9)).toEqual([
      'Audit summary',
      'Audit results',
      'Audit groups',
      'Audit problems',
      'As found and as left',
      'Audit drift',
      'Run-up',
      'Replay',
      'Calibration records',
    ]);
    const again = runAudit(folder, 'in.xlsx', '--out', 'out.xlsx');
    expect(again.code).toBe(2);
    expect(again.err).toContain('--force');
    expect(runAudit(folder, 'in.xlsx', '--out', 'out.xlsx', '--force').code).toBe(0);
    for (const same of ['in.xlsx', './in.xlsx']) {
      const refused = runAudit(folder, 'in.xlsx', '--out', same, '--force');
      expect(refused.code).toBe(2);
      expect(refused.err).toContain('is an input');
    }
    expect(readFileSync(join(folder, 'in.xlsx')).equals(before)).toBe(true);
    const second = runAudit(folder, 'out.xlsx', '--out', 'out2.xlsx');
    expect(second.out).toContain("'Audit summary (2)' (there is a 'Audit summary' already)");
    expect(second.out).toContain('59 channels: 5 cannot act');
  });

  test('text tables become a workbook with their own sheets before the results', () => {
    expect(runAudit(folder, channels, monitor, '--out', 'tables.xlsx').code).toBe(0);
    const book = readWorkbook('tables.xlsx', readFileSync(join(folder, 'tables.xlsx')));
    expect(book.sheets.map((sheet) => sheet.name).slice(0, 3)).toEqual([
      'channels',
      'monitor',
      'Audit summary',
    ]);
    expect(book.sheets[0]?.rows[1]?.[0]).toBe('X-1');
  });

  test('text tables with semicolons may have a decimal comma, and keep the zeros of a tag', () => {
    put('k.csv', '\uFEFFTag;Measured sensitivity (mV/µm)\r\n007;7,0\r\n');
    put('m.csv', 'Tag;Configured sensitivity (mV/µm);Alert (µm);Danger (µm)\r\n007;8,0;50;70,5\r\n');
    const report = JSON.parse(runAudit(folder, 'k.csv', 'm.csv', '--json', '-').out) as Report;
    expect(report.channels[0]?.tag).toBe('007');
    expect(report.channels[0]?.thresholds[1]?.effective).toBeCloseTo((70.5 * 8) / 7, 12);
  });

  test('a policy and a column map are read, and refused in one line where they are wrong', () => {
    put('simple.json', '{"tolerance": 0.3, "rule": "simple"}');
    const report = JSON.parse(
      runAudit(folder, channels, monitor, '--policy', 'simple.json', '--json', '-').out,
    ) as Report;
    expect(report.policy).toMatchObject({ tolerance: 0.3, rule: 'simple', coverage: 2 });
    expect(report.summary.within).toBe(1);
    put('bad.json', '{"tolerence": 0.3}');
    put('broken.json', '{');
    put('map.json', '{"channels": {"columns": {"measured sensitivity": "Q9"}}}');
    for (const [option, file, says] of [
      ['--policy', 'bad.json', 'tolerence'],
      ['--policy', 'broken.json', 'no JSON'],
      ['--map', 'map.json', 'Q9'],
    ] as const) {
      const refused = runAudit(folder, channels, monitor, option, file);
      expect(refused.code).toBe(2);
      expect(refused.err).toContain(says);
      oneLine(refused.err);
    }
  });

  test('bad usage and unreadable input are one line, exit code 2, and nothing written', () => {
    put('not.xlsx', 'this is no workbook');
    put('half.xlsx', readFileSync(demo).subarray(0, 5000).toString('latin1'));
    const listed = readdirSync(folder);
    const calls = [
      [],
      ['--nonsense'],
      ['missing.xlsx', '--out', 'x.xlsx'],
      ['not.xlsx', '--out', 'x.xlsx', '--json', 'x.json'],
      ['half.xlsx', '--json', 'x.json'],
      [demo, demo],
      [demo, '--out', 'x.csv'],
      [demo, '--out', 'nowhere/x.xlsx'],
      [demo, '--out', 'not.xlsx/x.xlsx'],
      [demo, '--out', `${'x'.repeat(300)}.xlsx`],
      [demo, '--json='],
      [demo, '--policy='],
      [channels, monitor, good],
      [channels, '--json', 'x.json'],
      [demo, '--policy', 'missing.json'],
    ];
    for (const call of calls) {
      const { code, out, err } = runAudit(folder, ...call);
      expect({ call, code, out }).toEqual({ call, code: 2, out: '' });
      oneLine(err);
      expect([call, err]).not.toEqual([call, expect.stringMatching(/unexpectedly|^exists|^:/)]);
      expect(err).not.toContain(folder);
    }
    expect(readdirSync(folder)).toEqual(listed);
    expect(existsSync(join(folder, 'x.json'))).toBe(false);
  });

  test('a name as long as a file may have is written', () => {
    // 83 characters of three bytes each and an ending of five: 254 of the 255 bytes that file systems commonly take.
    const name = `${'漢'.repeat(83)}.xlsx`;
    expect(runAudit(folder, good, monitor, '--out', name)).toMatchObject({ code: 0, err: '' });
    expect(readdirSync(folder)).toContain(name);
  });

  test('text from cells can not steer the terminal', () => {
    put('evil.csv', 'Tag,Measured sensitivity (mV/mil)\n"\u001b[2J\u202Eevil",100\n');
    put(
      'evilm.csv',
      'Tag,Configured sensitivity (mV/mil),Alert (mil),Danger (mil)\n"\u001b[2J\u202Eevil",200,3,5\n',
    );
    const { code, out } = runAudit(folder, 'evil.csv', 'evilm.csv');
    expect(code).toBe(0);
    expect(out).toContain('evil');
    // eslint-disable-next-line no-control-regex
    expect(out).not.toMatch(/[\u001b\u202E]/u);
  });

  test('--help explains options and exit codes', () => {
    const { code, out } = runAudit(folder, '--help');
    expect(code).toBe(0);
    for (const word of [
      '--out',
      '--json',
      '--policy',
      '--map',
      '--force',
      '--strict',
      '--details',
      '--verify OUT.xlsx',
      '2 no results in it',
      'Exit code',
      'Advisory only',
    ]) {
      expect(out).toContain(word);
    }
  });
});
