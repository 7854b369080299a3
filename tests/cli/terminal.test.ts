import { copyFileSync, existsSync, readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { expect, test } from 'vitest';
import { columnMapSchema } from '../../src/audit/model/columnMap.ts';
import { describeWithTool } from '../tool.ts';
import { auditAtTerminal, keys } from './atTerminal.ts';
import { runAudit, temporaryFolder } from './run.ts';

const folder = temporaryFolder();
const workbooks = resolve(import.meta.dirname, '../untidy/workbooks');
/** Two lists of settings for one rack: 32-VT-01 trips at 6.12 mil by the one in force. */
const racks = '08-rack-before-and-after.xlsx';
/** Two cells hold a number and a remark: 200 (nameplate) of G-02, approx. 170 of G-04. */
const remarks = '07-cells-with-remarks.xlsx';
for (const file of [racks, remarks]) copyFileSync(join(workbooks, file), join(folder, file));

const { enter, down, interrupt, eraseLine } = keys;
const audited = (file: string) => `Tripdrift audit of ${file}`;

describeWithTool('python3', 'questions at a terminal', () => {
  test('yes: audited with the proposal, and the answer kept for next time', () => {
    const { code, shown, done } = auditAtTerminal(
      folder,
      [racks],
      [
        ["Is sheet 'Rack N2' in force?", enter],
        ['Keep the answers in a file', enter],
        ['Name of the file', `${eraseLine}kept.json${enter}`],
      ],
    );
    expect({ code, done }).toEqual({ code: 0, done: 3 });
    expect(shown).toContain('Not understood: list in force.');
    expect(shown).toContain('3 channels cannot be judged without it.');
    expect(shown).toContain('32-VT-01 danger is late: set 5.2, really trips at 6.12 mil.');
    expect(shown).toContain('Written: kept.json, for --map.');
    expect(columnMapSchema.parse(JSON.parse(readFileSync(join(folder, 'kept.json'), 'utf8')))).toMatchObject({
      tables: [
        { sheet: 'Rack N2 after upgrade', use: false },
        { sheet: 'Rack N2', use: true },
      ],
    });
    expect(runAudit(folder, racks, '--map', 'kept.json').out).toContain('really trips at 6.12 mil');
  });

  test('other: the one chosen; a name that is taken is asked again', () => {
    const { code, shown, done } = auditAtTerminal(
      folder,
      [racks],
      [
        ["Is sheet 'Rack N2' in force?", down + down + enter],
        ['Which one?', enter],
        ['Keep the answers in a file', enter],
        ['Name of the file', `${eraseLine}${racks}${enter}`],
        ['is an input', `${eraseLine}other.json${enter}`],
      ],
    );
    expect({ code, done }).toEqual({ code: 0, done: 5 });
    expect(shown).toContain("Sheet 'Rack N2 after upgrade'");
    expect(shown).not.toContain('really trips at 6.12 mil');
    expect(existsSync(join(folder, 'other.json'))).toBe(true);
  });

  test('no: it stays open, nothing is kept, and only what is certain is audited', () => {
    const there = readdirSync(folder);
    const { code, shown, done } = auditAtTerminal(
      folder,
      [racks],
      [["Is sheet 'Rack N2' in force?", down + enter]],
    );
    expect({ code, done }).toEqual({ code: 0, done: 1 });
    expect(shown).toContain('Nothing answered.');
    expect(shown).toContain('3 not known');
    expect(shown).not.toContain('Keep the answers');
    expect(readdirSync(folder)).toEqual(there);
  });

  test('several: yes to all', () => {
    const { code, shown } = auditAtTerminal(
      folder,
      [remarks],
      [
        ['2 questions. How do you want to answer?', down + enter],
        ['Keep the answers in a file', down + enter],
      ],
    );
    expect(code).toBe(0);
    expect(shown).toContain(
      "Is the configured sensitivity of G-02 200? Cell Monitor!B3 says '200 (nameplate)'.",
    );
    expect(shown).toContain('2 answered.');
    expect(shown).toContain('G-04 danger is late');
  });

  test('Ctrl-C at any question: one line, nothing written', () => {
    const there = readdirSync(folder);
    const steps = [
      ['How do you want to answer?', enter],
      ['1 of 2. ', enter],
      ['2 of 2. ', enter],
      ['Keep the answers in a file', enter],
      ['Name of the file', ''],
    ] as const;
    for (const at of [0, 2, 4]) {
      const before = steps.slice(0, at);
      const [waitFor] = steps[at] ?? [''];
      const { code, shown } = auditAtTerminal(
        folder,
        [remarks, '--out', 'copy.xlsx', '--json', 'report.json'],
        [...before, [waitFor, interrupt]],
      );
      expect(code).toBe(130);
      expect(shown.trimEnd().split(/\r?\n/u).at(-1)).toBe('Stopped; nothing was written.');
      expect(shown).not.toContain(audited(remarks));
    }
    expect(readdirSync(folder)).toEqual(there);
  });

  test('nobody is asked where everything is certain, with --propose, or on a build server', () => {
    writeFileSync(
      join(folder, 'said.json'),
      JSON.stringify({ tables: [{ sheet: 'Rack N2 after upgrade', header: 1, use: false }] }),
    );
    const asked = (args: readonly string[], environment = {}) =>
      auditAtTerminal(folder, args, [], environment);
    const calls = [
      asked([racks, '--map', 'said.json']),
      asked([racks, '--propose', 'p.json']),
      asked([racks], { CI: 'true' }),
    ];
    for (const { code, shown } of calls) {
      expect(code).toBe(0);
      expect(shown).toContain(audited(racks));
      expect(shown).not.toContain('Enter: confirm');
    }
  });
});
