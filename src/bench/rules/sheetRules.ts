import type { Injector } from '@univerjs/core';
import type { Area } from '../../cells/sheet.ts';
import type { ViewRule, ViewShade } from '../../hosts/file/view/types.ts';
import { type Calculated, calculated } from './calculated.ts';
import { fits, type CellValue, constantOf } from './compare.ts';
import { cellAddress } from '../../cells/address.ts';

const signs: Readonly<Record<string, string>> = {
  equal: '=',
  notEqual: '<>',
  lessThan: '<',
  lessThanOrEqual: '<=',
  greaterThan: '>',
  greaterThanOrEqual: '>=',
};

/** A sheet of the grid as rules see it; rows and columns from 1. */
export interface RuledSheet {
  readonly unitId: string;
  readonly sheetId: string;
  readonly lastRow: number;
  readonly lastColumn: number;
  /** What a cell says; `undefined` where it shows an error. */
  readonly valueAt: (row: number, column: number) => CellValue | undefined;
}

export interface SheetRules {
  /** What the rules change in the look of a cell; `undefined` where none applies. */
  shadeAt(row: number, column: number): ViewShade | undefined;
  /** Cells changed: what was counted has to be counted anew. */
  changed(): void;
  stop(): void;
}

/** A rule whose formula would have to be calculated for more cells is not shown: the grid would stand still. */
const mostCalculated = 4_000;

interface ReadyRule {
  readonly rule: ViewRule;
  readonly holds: (row: number, column: number) => boolean;
  readonly changed?: () => void;
  readonly stop?: () => void;
}

/** The rules of a sheet, ready to be asked; those that can't be decided here hold nowhere. */
export function sheetRules(injector: Injector, sheet: RuledSheet, rules: readonly ViewRule[]): SheetRules {
  const ready = rules.map((rule): ReadyRule => readyRule(injector, sheet, rule));
  return {
    shadeAt: (row, column) => {
      let shade: ViewShade | undefined;
      for (const { rule, holds } of ready) {
        if (!rule.areas.some((area) => inside(area, row, column)) || !holds(row, column)) continue;
        // What an earlier rule says stands.
        shade = { ...rule.shade, ...shade };
        if (rule.stops) break;
      }
      return shade;
    },
    changed: () => {
      for (const rule of ready) rule.changed?.();
    },
    stop: () => {
      for (const rule of ready) rule.stop?.();
    },
  };
}

function readyRule(injector: Injector, sheet: RuledSheet, rule: ViewRule): ReadyRule {
  const { kind, operator = '', formulas } = rule;
  const constants = formulas.flatMap((formula) => constantOf(formula) ?? []);
  if (kind === 'cellIs' && constants.length === formulas.length) {
    return {
      rule,
      holds: (row, column) => {
        const value = sheet.valueAt(row, column);
        return value !== undefined && fits(operator, value, constants);
      },
    };
  }
  const areas = usedParts(sheet, rule.areas);
  return kind === 'duplicate' || kind === 'unique'
    ? countedRule(sheet, rule, areas)
    : calculatedRule(injector, sheet, rule, areas);
}

function countedRule(sheet: RuledSheet, rule: ViewRule, areas: readonly Area[]): ReadyRule {
  const valueAt = (row: number, column: number): CellValue => sheet.valueAt(row, column) ?? null;
  let count: ReturnType<typeof countMatching> | undefined;
  return {
    rule,
    holds: (row, column) => {
      count ??= countMatching(areas, valueAt);
      const found = count(valueAt(row, column));
      return rule.kind === 'duplicate' ? found > 1 : found === 1;
    },
    changed: () => {
      count = undefined;
    },
  };
}

function calculatedRule(
  injector: Injector,
  sheet: RuledSheet,
  rule: ViewRule,
  areas: readonly Area[],
): ReadyRule {
  const formula = ruleFormula(rule);
  const cells = areas.reduce(
    (sum, { top, left, bottom, right }) => sum + (bottom - top + 1) * (right - left + 1),
    0,
  );
  if (formula === undefined || cells > mostCalculated) return { rule, holds: () => false };
  let running: Calculated | undefined;
  // The engine takes formulas between two drawings, not in the midst of one.
  const start = setTimeout(() => {
    running = calculated(injector, sheet, formula, areas);
  }, 0);
  return {
    rule,
    holds: (row, column) => running?.holds(row, column) ?? false,
    stop: () => {
      clearTimeout(start);
      running?.stop();
    },
  };
}

/** Parts of areas in which something stands; the first area keeps its top left cell, which formulas count from. */
function usedParts({ lastRow, lastColumn }: RuledSheet, areas: readonly Area[]): Area[] {
  return areas.flatMap((area, index) => {
    const bottom = Math.min(area.bottom, lastRow);
    const right = Math.min(area.right, lastColumn);
    if (index === 0)
      return [{ ...area, bottom: Math.max(area.top, bottom), right: Math.max(area.left, right) }];
    return bottom < area.top || right < area.left ? [] : [{ ...area, bottom, right }];
  });
}

function inside({ top, left, bottom, right }: Area, row: number, column: number): boolean {
  return row >= top && row <= bottom && column >= left && column <= right;
}

/** How often the areas of a rule hold what a cell says: texts without regard to case, blank cells never. */
export function countMatching(
  areas: readonly Area[],
  valueAt: (row: number, column: number) => CellValue,
): (value: CellValue) => number {
  const counts = new Map<string, number>();
  for (const { top, left, bottom, right } of areas) {
    for (let row = top; row <= bottom; row++) {
      for (let column = left; column <= right; column++) {
        const key = keyOf(valueAt(row, column));
        if (key !== undefined) counts.set(key, (counts.get(key) ?? 0) + 1);
      }
    }
  }
  return (value) => counts.get(keyOf(value) ?? '') ?? 0;
}

function keyOf(value: CellValue): string | undefined {
  if (value === null || value === '') return undefined;
  return `${typeof value} ${String(value).toLowerCase()}`;
}

/**
 * A rule as one formula, with its `=`, that is true where the rule applies, for the top left cell of its first area;
 * `undefined` where it can't be said so.
 */
export function ruleFormula({ kind, operator = '', formulas, areas }: ViewRule): string | undefined {
  const [first, second] = formulas;
  const [area] = areas;
  if (first === undefined || !area) return undefined;
  if (kind === 'expression') return `=${first}`;
  if (kind !== 'cellIs') return undefined;
  const cell = cellAddress(area.top, area.left);
  const sign = signs[operator];
  if (sign !== undefined) return `=${cell}${sign}(${first})`;
  if (second === undefined) return undefined;
  if (operator === 'between')
    return `=AND(${cell}>=MIN(${first},${second}),${cell}<=MAX(${first},${second}))`;
  if (operator === 'notBetween')
    return `=OR(${cell}<MIN(${first},${second}),${cell}>MAX(${first},${second}))`;
  return undefined;
}
