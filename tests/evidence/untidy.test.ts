import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { unzipSync, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { audit, type AuditOptions } from '../../src/audit/audit.ts';
import { snapshotOf } from '../../src/audit/since/fromReport.ts';
import { NotUnderstood } from '../../src/audit/read/understand/understand.ts';
import { columnLetters, columnNumber } from '../../src/cells/address.ts';
import type { Cell } from '../../src/cells/cell.ts';
import type { Workbook } from '../../src/cells/sheet.ts';
import { isClean } from '../../src/evidence/verification.ts';
import { verify } from '../../src/evidence/verify.ts';
import { readWorkbook } from '../../src/hosts/file/read/workbook.ts';
import { runAudit, temporaryFolder } from '../cli/run.ts';
import { edited, now, withResults } from './written.ts';

const untidy = join(import.meta.dirname, '..', 'untidy', 'workbooks');

interface Told {
  readonly file: string;
  readonly truth: {
    readonly channels: readonly {
      readonly tag: readonly string[];
      readonly measured: number | null;
      readonly asLeft: number | null;
    }[];
  };
}
const told = JSON.parse(readFileSync(join(untidy, 'truth.json'), 'utf8')) as readonly Told[];

/** What the proposal says, where it has to be answered before anything is judged or something is asked. */
function answered(workbook: Workbook): AuditOptions {
  try {
    const { questions, proposal } = audit(workbook, { now });
    return questions.length > 0 && proposal ? { now, map: proposal } : { now };
  } catch (error) {
    if (error instanceof NotUnderstood) return { now, map: error.proposal };
    throw error;
  }
}

/** Micrometres in a mil, exactly; the truth is in mV/mil. */
const mil = 25.4;

/** A number of a cell, or of a text of one with a decimal comma. */
function numberIn(cell: Cell): number {
  return typeof cell === 'number' ? cell : typeof cell === 'string' ? Number(cell.replace(',', '.')) : NaN;
}

/** A measured sensitivity, as left where it was measured again, that stands in one cell of the workbook alone, by the truth and not by our reading. */
function loneReading(workbook: Workbook, { truth }: Told) {
  for (const { tag, measured, asLeft } of truth.channels) {
    const reading = asLeft ?? measured;
    if (reading === null) continue;
    const isIt = (cell: Cell): boolean =>
      [1, mil].some((per) => Math.abs(numberIn(cell) * per - reading) < 1e-9);
    const places = workbook.sheets.flatMap(({ name, rows }) =>
      rows.flatMap((cells, row) =>
        cells.flatMap((cell, column) =>
          isIt(cell) ? [{ sheet: name, row: row + 1, column: columnLetters(column + 1) }] : [],
        ),
      ),
    );
    const [place] = places;
    if (place && places.length === 1) return { tag, place };
  }
  throw new Error(`no reading of ${workbook.name} stands alone`);
}

/** The workbook with that reading one percent greater, written as it was. */
function typedOver(
  workbook: Workbook,
  { sheet, row, column }: ReturnType<typeof loneReading>['place'],
): Workbook {
  const at = columnNumber(column) - 1;
  const greater = (cell: Cell): Cell => {
    const value = 1.01 * numberIn(cell);
    return typeof cell === 'string' ? String(value).replace('.', ',') : value;
  };
  return edited(workbook, sheet, (rows) =>
    rows.map((cells, index) =>
      index === row - 1 ? cells.map((cell, place) => (place === at ? greater(cell) : cell)) : cells,
    ),
  );
}

describe.each(told)('$file', (one) => {
  const bytes = readFileSync(join(untidy, one.file));
  const workbook = readWorkbook(one.file, bytes);
  const options = answered(workbook);
  const before = audit(workbook, options);
  const { tag, place } = loneReading(workbook, one);

  it('with results is as audited; a reading that was typed over is named with its cell', () => {
    const written = readWorkbook(one.file, withResults(bytes, options));
    const untouched = verify(written);
    expect(isClean(untouched), JSON.stringify(untouched)).toBe(true);
    const { inputs, policy, results } = verify(typedOver(written, place));
    expect([inputs.state, policy.state, results.state]).toEqual(['edited', 'as audited', 'as audited']);
    expect(inputs.cells.map(({ sheet, row, column }) => ({ sheet, row, column }))).toEqual([place]);
  });

  it('compared with itself has changed in nothing, and in one sensitivity where one reading is another', () => {
    const self = audit(workbook, { ...options, before: snapshotOf(before) });
    expect(self.since?.changes.filter(({ kind }) => !kind.startsWith('still'))).toEqual([]);
    expect(self.fingerprint).toEqual(before.fingerprint);
    const after = audit(typedOver(workbook, place), {
      ...options,
      before: snapshotOf(before),
    });
    expect(after.fingerprint.inputs).not.toBe(before.fingerprint.inputs);
    expect(after.since?.counts).toMatchObject({
      'changed sensitivity': 1,
      'not compared': 0,
      gone: 0,
      new: 0,
    });
    const changed = after.since?.changes.find(({ kind }) => kind === 'changed sensitivity');
    expect([...tag, tag.join(' ')]).toContain(changed?.tag);
  });
});

describe('a proposal that was accepted as it came', () => {
  it.each(['03-dos-listas.xlsx', '04-machine-in-a-cell.xlsx'])('%s is as audited', (file) => {
    const bytes = readFileSync(join(untidy, file));
    const map = audit(readWorkbook(file, bytes), { now }).proposal;
    expect(map?.tables?.some(({ machine }) => machine !== undefined)).toBe(true);
    const verification = verify(readWorkbook(file, withResults(bytes, { map: map ?? {} })));
    expect(isClean(verification), JSON.stringify(verification)).toBe(true);
  });
});

describe('the commands for a workbook of another shape', () => {
  const folder = temporaryFolder();
  const file = '01-tested-and-entered.xlsx';
  const bytes = readFileSync(join(untidy, file));

  /** The file with 163 mV/mil, measured at one probe, typed over. */
  function fileTypedOver(name: string, from: Uint8Array): void {
    const parts = Object.entries(unzipSync(from)).map(([part, content]) => {
      const text = new TextDecoder().decode(content);
      const isList = part.startsWith('xl/worksheets/') && text.includes('r="D4"');
      return [
        part,
        isList ? new TextEncoder().encode(text.replace(/(r="D4"[^>]*><v>)163</u, '$1164<')) : content,
      ];
    });
    writeFileSync(join(folder, name), zipSync(Object.fromEntries(parts) as Record<string, Uint8Array>));
  }

  it('--verify finds an edit, and --since the sensitivity that changed', () => {
    writeFileSync(join(folder, 'before.xlsx'), bytes);
    fileTypedOver('after.xlsx', bytes);
    expect(runAudit(folder, 'before.xlsx', '--out', 'copy.xlsx').code).toBe(0);
    const clean = runAudit(folder, '--verify', 'copy.xlsx');
    expect(clean.code, clean.out).toBe(0);
    fileTypedOver('typed.xlsx', readFileSync(join(folder, 'copy.xlsx')));
    const found = runAudit(folder, '--verify', 'typed.xlsx');
    expect(found.code).toBe(1);
    expect(found.out).toContain('Walkdown!D4: “164”, was “163”');
    const since = runAudit(folder, 'after.xlsx', '--since', 'before.xlsx');
    expect(since.code).toBe(0);
    expect(since.out).toMatch(/Since before\.xlsx\n.*1 changed sensitivity/u);
  });
});
