import { copyFileSync, existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, test } from 'vitest';
import { columnMapSchema, type ColumnMap } from '../../src/audit/model/columnMap.ts';
import { judge } from '../untidy/judge/judge.ts';
import type { Judgement, Outcome } from '../untidy/judge/outcome.ts';
import { ownWorkbooks } from '../untidy/ownWorkbooks.ts';
import { demo, runAudit, temporaryFolder } from './run.ts';

const folder = temporaryFolder();
const own = new Map(ownWorkbooks().map((one) => [one.file, one]));
const workbooks = resolve(import.meta.dirname, '../untidy/workbooks');
for (const file of own.keys()) copyFileSync(join(workbooks, file), join(folder, file));

/** Two lists with the same tags and other settings: which is in force is asked. */
const racks = '08-rack-before-and-after.xlsx';
/** All in plant words, and all certain. */
const certain = '01-tested-and-entered.xlsx';

function outcome(report: unknown, accepted: Outcome['accepted'] = null): Outcome {
  return { report, refusal: null, proposed: [], choice: [], accepted };
}

/** What the audit with a map is worth to a person who was asked: `asked` where all is right then. */
function judged(file: string, map: string): Judgement {
  const { code, out, err } = runAudit(folder, file, '--map', map, '--json', '-');
  expect({ file, code, err }).toEqual({ file, code: 0, err: '' });
  const truth = own.get(file)?.truth;
  if (!truth) throw new Error(`no truth of ${file}`);
  return judge(
    truth,
    outcome(null, () => outcome(JSON.parse(out))),
  );
}

function mapIn(name: string): ColumnMap {
  return columnMapSchema.parse(JSON.parse(readFileSync(join(folder, name), 'utf8')));
}

describe('a proposal', () => {
  test.each([racks, '03-dos-listas.xlsx', '13-x-y-pairs.xlsx'])(
    'is a map that reads right as it is: %s',
    (file) => {
      const map = `${file}.json`;
      const proposed = runAudit(folder, file, '--propose', map);
      expect(proposed).toMatchObject({ code: 0, err: '' });
      expect(proposed.out).toContain(`Written: ${map}, for --map.`);
      expect(judged(file, map)).toMatchObject({ grade: 'asked', misleads: false });
    },
  );

  test('says of every column and every answer why it is proposed', () => {
    runAudit(folder, racks, '--propose', 'why.json');
    const { tables = [] } = mapIn('why.json');
    const fields = tables.flatMap(({ columns = {} }) => Object.values(columns));
    expect(fields.length).toBeGreaterThan(8);
    for (const field of fields) {
      expect(field).toMatchObject({ at: expect.any(String) as string, header: expect.any(String) as string });
      expect(typeof field === 'object' ? field?.evidence?.length : 0).toBeGreaterThan(0);
    }
    const [after, before] = ['Rack N2 after upgrade', 'Rack N2'].map((name) =>
      tables.find(({ sheet }) => sheet === name),
    );
    expect(before).toMatchObject({ use: true });
    expect(after).toMatchObject({ use: false });
    expect(after?.evidence?.join()).toContain('32-VT-01');
  });

  test('is written where all is certain too, and reads the same', () => {
    expect(runAudit(folder, certain, '--propose', 'certain.json').code).toBe(0);
    expect(judged(certain, 'certain.json')).toMatchObject({ grade: 'asked', misleads: false });
  });

  test('goes to standard output alone where it is asked for', () => {
    const { code, out, err } = runAudit(folder, racks, '--propose', '-');
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(columnMapSchema.parse(JSON.parse(out)).tables?.length).toBe(4);
    const both = runAudit(folder, racks, '--propose', '-', '--json', '-');
    expect(both).toMatchObject({ code: 2, out: '' });
    expect(both.err).toContain('Name a file for one');
  });

  test('replaces nothing without --force, and no input at all', () => {
    writeFileSync(join(folder, 'there.json'), 'mine');
    const refused = runAudit(folder, racks, '--propose', 'there.json');
    expect(refused.code).toBe(2);
    expect(refused.err).toContain('there.json exists');
    expect(readFileSync(join(folder, 'there.json'), 'utf8')).toBe('mine');
    expect(runAudit(folder, racks, '--propose', 'there.json', '--force').code).toBe(0);
    expect(mapIn('there.json').tables?.length).toBe(4);
    const input = runAudit(folder, racks, '--propose', racks, '--force');
    expect(input).toMatchObject({ code: 2, out: '' });
    expect(input.err).toContain('is an input');
    const twice = runAudit(folder, racks, '--propose', 'new.json', '--json', 'new.json');
    expect(twice.err).toContain('name the same file');
    expect(existsSync(join(folder, 'new.json'))).toBe(false);
  });
});

describe('a workbook that is not understood whole', () => {
  test('partly read: audited, and three lines below say what was understood, what was not, and what to do', () => {
    const { code, out } = runAudit(folder, racks);
    expect(code).toBe(0);
    expect(out).toContain('3 not known');
    // Nobody was asked: there is no terminal.
    expect(out).not.toContain('Enter: confirm');
    const lines = out.trimEnd().split('\n').slice(-3);
    expect(lines[0]).toMatch(/^Understood: 6 channels in 4 lists on /u);
    expect(lines[1]).toBe('Not understood: list in force.');
    expect(lines[2]).toBe(
      'To do: answer 1 question. --propose M.json writes a proposal to check; --map M.json audits with it.',
    );
  });

  test('nothing can be judged: three lines, exit code 2, and nothing written but the proposal', () => {
    // No header says which of both is in force, and no unit stands anywhere.
    writeFileSync(
      join(folder, 'bare.csv'),
      'Tag,SF in monitor,Actual SF,HI,HIHI\n1X,200,160,3,5\n1Y,200,201,3,5\n',
    );
    const there = readdirSync(folder);
    const refused = runAudit(folder, 'bare.csv', '--json', 'bare-report.json');
    expect(refused).toMatchObject({ code: 2, out: '' });
    expect(refused.err.trimEnd().split('\n')).toEqual([
      expect.stringMatching(/^Understood: /u),
      expect.stringMatching(/^Not understood: .*(?:unit|sensitivity|alert|danger)/u),
      expect.stringMatching(/^To do: answer \d+ questions/u),
    ]);
    expect(readdirSync(folder)).toEqual(there);
    const proposed = runAudit(folder, 'bare.csv', '--propose', 'bare.json');
    expect(proposed).toMatchObject({ code: 2, out: '' });
    expect(proposed.err).toContain('Check bare.json, then audit with --map bare.json.');
    const { code, out } = runAudit(folder, 'bare.csv', '--map', 'bare.json');
    expect(code).toBe(0);
    // Worked by hand: 5 mil · 200/160 = 6.25 mil.
    expect(out).toContain('1X danger is late: set 5, really trips at 6.25 mil.');
  });
});

describe('a map that names what is not there', () => {
  test('is refused in one line, with the sheet, the column and the cure', () => {
    const columns = { danger: { at: 'D', header: 'HH' } };
    writeFileSync(
      join(folder, 'wrong.json'),
      JSON.stringify({ tables: [{ sheet: 'Rack N2', header: 1, columns }] }),
    );
    const { code, out, err } = runAudit(folder, racks, '--map', 'wrong.json');
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toBe(
      "Column map, sheet 'Rack N2', list in row 1, danger: column D is 'Danger (mil)' by now, not 'HH'. Correct 'at' and 'header', or make the proposal anew.\n",
    );
  });

  test('one that was made for another workbook is refused', () => {
    runAudit(folder, racks, '--propose', 'racks.json');
    const { code, err } = runAudit(folder, demo, '--map', 'racks.json');
    expect(code).toBe(2);
    expect(err).toContain('there is no sheet');
  });
});
