import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { budgetRows, levelRow, resultRow } from '../../src/tools/template/budget/budgetPlaces.ts';
import { budgetSheet } from '../../src/tools/template/budget/budgetSheet.ts';
import { ErrorCell } from '../../src/cells/cell.ts';
import {
  type Distribution,
  standardUncertainty,
  combineUncertainties,
  coverageFactor,
} from '../../src/method/uncertainty.ts';
import type { ModelRow, SheetModel } from '../../src/sheets/model.ts';
import { describeWithLibreOffice } from '../libreoffice.ts';
import { recalculated } from './workbookFiles.ts';

const folder = mkdtempSync(join(tmpdir(), 'budget-'));
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

type Part = readonly [value: number, distribution: string, freedom?: number];

interface Budget {
  readonly parts: readonly Part[];
  readonly level?: number;
}

/** The template's budget with parts filled in, under another name. */
function filledIn({ parts, level }: Budget, name: string): SheetModel {
  const sheet = budgetSheet();
  const { first, last } = budgetRows;
  return {
    ...sheet,
    name,
    *rows(): Generator<ModelRow> {
      let number = 0;
      for (const row of sheet.rows()) {
        number++;
        const cells = [...row.cells];
        const set = (at: number, value: string | number | null) => (cells[at] = { ...cells[at], value });
        if (number >= first && number <= last) {
          const [value = null, distribution = null, freedom = null] = parts[number - first] ?? [];
          for (const [at, typed] of [
            [1, value],
            [2, distribution],
            [5, freedom],
          ] as const)
            set(at, typed);
        }
        if (number === levelRow && level !== undefined) set(4, level);
        yield { ...row, cells };
      }
    },
  };
}

/** What LibreOffice makes of budgets: standard uncertainty, degrees of freedom, k and expanded uncertainty of each. */
function worked(budgets: readonly Budget[]) {
  const models = budgets.map((budget, index) => filledIn(budget, `Budget ${index + 1}`));
  return recalculated(models, folder).sheets.map(({ rows }) => {
    const at = (row: number) => rows[row - 1]?.[4];
    return {
      standard: at(resultRow.standard),
      freedom: at(resultRow.freedom),
      factor: at(resultRow.factor),
      expanded: at(resultRow.expanded),
    };
  });
}

const ownParts: readonly Part[] = [
  [0.6, 'normal'],
  [0.3, 'rectangular'],
  [0.35, 'standard', 4],
  [0.5, 'triangular'],
  [0.25, 'rectangular', 8],
];

// Source: LibreOffice calculates the template's own formulas.
describeWithLibreOffice('the uncertainty budget of the template', () => {
  type Worked = ReturnType<typeof worked>[number] | undefined;
  let [product, gauge, single, empty, own, unknown, blank, negative]: Worked[] = [];
  beforeAll(() => {
    [product, gauge, single, empty, own, unknown, blank, negative] = worked([
      {
        parts: [
          [0.25, 'standard', 9],
          [0.57, 'standard', 4],
          [0.82, 'standard', 14],
        ],
        level: 0.95,
      },
      {
        parts: [
          [25, 'standard', 18],
          [9.7, 'standard', 25.6],
          [2.9, 'standard', 50],
          [16.6, 'standard', 2],
        ],
        level: 0.99,
      },
      { parts: [[2, 'normal']] },
      { parts: [] },
      { parts: ownParts },
      {
        parts: [
          [1, 'normal'],
          [1, 'guessed'],
        ],
      },
      {
        parts: [
          [1, 'normal'],
          [1, ''],
        ],
      },
      {
        parts: [
          [1, 'normal'],
          [-1, 'normal'],
        ],
      },
    ]);
  });
  const number = (found: unknown) => Number(found);

  // Source: JCGM 100:2008 G.4.1 (text read): 1.03 %, 19.0 degrees of freedom, t95(19) = 2.09, U95 = 2.2 %.
  it('gives 1.03 %, 19 degrees of freedom, k 2.09 and U 2.2 % for the product of three quantities', () => {
    expect(Math.abs(number(product?.standard) - 1.03)).toBeLessThan(0.005);
    expect(Math.abs(number(product?.freedom) - 19)).toBeLessThan(0.05);
    expect(Math.abs(number(product?.factor) - 2.09)).toBeLessThan(0.005);
    expect(Math.abs(number(product?.expanded) - 2.2)).toBeLessThan(0.05);
  });

  // Source: JCGM 100:2008 H.1 (from memory): 32 nm, 16 whole degrees of freedom, t99(16) = 2.92, U99 = 93 nm of the
  // rounded 32 nm. Between whole degrees of freedom k lies between t99(16) = 2.92 and t99(17) = 2.90.
  it('gives 32 nm and 16 degrees of freedom for the end gauge', () => {
    expect(Math.abs(number(gauge?.standard) - 32)).toBeLessThan(0.5);
    expect(Math.floor(number(gauge?.freedom))).toBe(16);
    expect(number(gauge?.factor)).toBeGreaterThan(2.895);
    expect(number(gauge?.factor)).toBeLessThan(2.925);
    expect(number(gauge?.expanded) / 93).toBeCloseTo(1, 1);
  });

  // Source: JCGM 100:2008 table G.2 (text read): k = 2 at 95.45 % without end to the degrees of freedom.
  it('gives back an expanded uncertainty that stands alone', () => {
    expect(single).toMatchObject({ standard: 1, freedom: 'unlimited' });
    expect(number(single?.factor)).toBeCloseTo(2, 4);
    expect(number(single?.expanded)).toBeCloseTo(2, 4);
  });

  it('agrees with the method for parts of every distribution', () => {
    const parts = ownParts.map(([value, distribution, freedom = Infinity]) => ({
      standard: standardUncertainty(value, distribution as Distribution),
      freedom,
    }));
    const combined = combineUncertainties(parts)!;
    expect(number(own?.standard) / combined.standard).toBeCloseTo(1, 12);
    expect(number(own?.freedom) / combined.freedom).toBeCloseTo(1, 12);
    // Interpolated between whole degrees of freedom here, worked out at broken ones there.
    expect(number(own?.factor) / coverageFactor(0.9545, combined.freedom)).toBeCloseTo(1, 4);
  });

  it('is empty while nothing is filled in', () => {
    const nothing = (found: unknown) => found === '' || found === null || found === undefined;
    for (const found of Object.values(empty ?? {})) expect(nothing(found)).toBe(true);
  });

  it.each([
    ['of a distribution that is not known', () => unknown],
    ['without a distribution', () => blank],
    ['below zero', () => negative],
  ])('is an error, not a smaller number, with a part %s', (_, found) => {
    const values = Object.values(found() ?? {});
    expect(values).toHaveLength(4);
    for (const value of values) expect(value).toEqual(new ErrorCell('#N/A'));
  });
});
