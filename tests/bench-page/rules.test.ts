import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { fits, constantOf } from '../../src/bench/rules/compare.ts';
import { countMatching, ruleFormula } from '../../src/bench/rules/sheetRules.ts';
import { convert, describeWithLibreOffice } from '../libreoffice.ts';
import { shownWorkbook } from './shownWorkbook.ts';

const values = [5, 0, null, -3, 10, 6, 3.5, 'late', 'LATE', 'a', 'z', '5'] as const;
const operators = [
  'equal',
  'notEqual',
  'lessThan',
  'lessThanOrEqual',
  'greaterThan',
  'greaterThanOrEqual',
  'between',
  'notBetween',
] as const;
const bounds = [
  ['3.5', '-1'],
  ['0', '6'],
  ['"late"', '"m"'],
] as const;
const rules = operators.flatMap((operator) => bounds.map((operands) => ({ operator, operands })));

describe('comparisons of conditional formats', () => {
  it('puts numbers before texts and texts before truth values (Excel, from memory)', () => {
    expect(fits('greaterThan', 'late', [1e9])).toBe(true);
    expect(fits('greaterThan', true, ['z'])).toBe(true);
    expect(fits('lessThan', 1e9, [''])).toBe(true);
  });

  it('knows constants from formulas', () => {
    expect(['-1.5E3', '"say ""late"""', 'TRUE'].map(constantOf)).toEqual([-1500, 'say "late"', true]);
    expect(['A1', '1+1', '"a"&"b"', '', '1e'].map(constantOf)).toEqual(Array(5).fill(undefined));
  });

  it('fits nothing where the operator is unknown or an operand is missing', () => {
    expect([fits('containsText', 1, [1]), fits('equal', null, [])]).toEqual([false, false]);
  });

  it('counts texts without regard to case, blank cells never, a text that is a number apart from the number', () => {
    const cells = ['P-1', 'p-1', null, null, '', 1, '1'] as const;
    const area = { top: 1, left: 1, bottom: cells.length, right: 1 };
    const count = countMatching([area], (row) => cells[row - 1] ?? null);
    expect(cells.map(count)).toEqual([2, 2, 0, 0, 0, 1, 1]);
  });

  it('writes a comparison with other cells as a formula for the first cell', () => {
    const areas = [{ top: 4, left: 3, bottom: 9, right: 3 }];
    const written = (operator: string, ...formulas: string[]) =>
      ruleFormula({ kind: 'cellIs', operator, formulas, areas, shade: {}, stops: false });
    expect(written('lessThan', '$B$1+1')).toBe('=C4<($B$1+1)');
    expect(written('between', 'A1', 'B1')).toBe('=AND(C4>=MIN(A1,B1),C4<=MAX(A1,B1))');
    expect(written('between', 'A1')).toBeUndefined();
  });
});

describeWithLibreOffice('comparisons of conditional formats', () => {
  const folder = mkdtempSync(join(tmpdir(), 'rules-'));
  afterAll(() => {
    rmSync(folder, { recursive: true, force: true });
  });

  it('colour the cells that LibreOffice colours, a text beside a number apart', () => {
    const markup = rules.map(({ operator, operands }, column) => {
      const letter = String.fromCharCode(65 + column);
      const count = operator.toLowerCase().includes('between') ? 2 : 1;
      const formulas = operands.slice(0, count).map((operand) => `<formula>${operand}</formula>`);
      return `<conditionalFormatting sqref="${letter}1:${letter}${values.length}"><cfRule type="cellIs" dxfId="0" priority="${column + 1}" operator="${operator}">${formulas.join('')}</cfRule></conditionalFormatting>`;
    });
    const path = join(folder, 'rules.xlsx');
    const rows = values.map((value) => rules.map(() => value));
    writeFileSync(path, shownWorkbook({ sheets: [{ name: 'Rules', rows, rules: markup.join('') }] }));
    const page = readFileSync(convert(path, 'html', join(folder, 'out')), 'utf8');
    const cells = Array.from(page.matchAll(/<td[^>]*>/g), ([cell]) => cell.includes('bgcolor="#FFC7CE"'));
    expect(cells).toHaveLength(values.length * rules.length);
    let compared = 0;
    values.forEach((value, row) => {
      rules.forEach(({ operator, operands }, column) => {
        const constants = operands.flatMap((operand) => constantOf(operand) ?? []);
        const ordered = operator !== 'equal' && operator !== 'notEqual';
        // Excel orders texts behind numbers, LibreOffice colours none of them.
        if (ordered && value !== null && typeof value !== typeof constants[0]) return;
        compared++;
        const why = `${String(value)} ${operator} ${operands.join(', ')}`;
        expect(fits(operator, value, constants), why).toBe(cells[row * rules.length + column]);
      });
    });
    expect(compared).toBeGreaterThan(150);
  });
});
