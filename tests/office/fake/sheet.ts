import type { Area } from '../../../src/cells/sheet.ts';
import type { FakeChart } from './chart.ts';
import { type Content, FormulaCell } from './entry.ts';

/** A property painted onto an area, such as `font.bold`; later ones cover earlier ones. */
interface Paint {
  readonly area: Area;
  readonly property: string;
  readonly value: unknown;
}

export interface FakeTable {
  name: string;
  style?: string;
  readonly area: Area;
  readonly showHeaders: boolean;
  readonly showTotals: boolean;
}

export interface FakeRule {
  readonly area: Area;
  readonly type: unknown;
  rule: unknown;
  stopIfTrue: boolean;
  readonly format: Map<string, unknown>;
}

/** A sheet of the fake workbook: its state, without any of the interface. */
export class FakeSheet {
  visibility: 'Visible' | 'Hidden' | 'VeryHidden' = 'Visible';
  isProtected = false;
  unlocked: Area[] = [];
  readonly hiddenRows = new Set<number>();
  readonly hiddenColumns = new Set<number>();
  readonly tables: FakeTable[] = [];
  merges: Area[] = [];
  /** In order of priority, the first first. */
  readonly rules: FakeRule[] = [];
  readonly charts: FakeChart[] = [];
  /** Where cells lead, by their addresses. */
  readonly links = new Map<string, string>();
  filter: Area | null = null;
  frozen: Area | null = null;
  readonly page = new Map<string, unknown>();
  /** How often all of it was calculated anew. */
  calculations = 0;
  readonly #contents: (Content | undefined)[][] = [];
  readonly #formats: (string | undefined)[][] = [];
  readonly #paints: Paint[] = [];

  constructor(
    readonly id: string,
    public name: string,
  ) {}

  content(row: number, column: number): Content | undefined {
    return this.#contents[row]?.[column];
  }

  setContent(row: number, column: number, content: Content | undefined): void {
    (this.#contents[row] ??= [])[column] = content;
  }

  /** Writes every formula anew. */
  changeFormulas(change: (formula: string) => string): void {
    this.#contents.forEach((row) => {
      row.forEach((content, column) => {
        if (content instanceof FormulaCell)
          row[column] = new FormulaCell(change(content.formula), content.result);
      });
    });
  }

  format(row: number, column: number): string {
    return this.#formats[row]?.[column] ?? 'General';
  }

  setFormat(row: number, column: number, format: string): void {
    (this.#formats[row] ??= [])[column] = format;
  }

  paint(area: Area, property: string, value: unknown): void {
    this.#paints.push({ area, property, value });
  }

  painted(row: number, column: number, property: string): unknown {
    return this.#paints.findLast((paint) => paint.property === property && holds(paint.area, row, column))
      ?.value;
  }

  /** The smallest area that holds every filled cell. */
  used(): Area | null {
    let area: Area | null = null;
    this.#contents.forEach((cells, row) => {
      cells.forEach((content, column) => {
        if (content === undefined) return;
        area ??= { top: row, left: column, bottom: row, right: column };
        area = {
          top: Math.min(area.top, row),
          left: Math.min(area.left, column),
          bottom: Math.max(area.bottom, row),
          right: Math.max(area.right, column),
        };
      });
    });
    return area;
  }

  isLocked(row: number, column: number): boolean {
    return !this.unlocked.some((area) => holds(area, row, column));
  }
}

function holds({ top, left, bottom, right }: Area, row: number, column: number): boolean {
  return row >= top && row <= bottom && column >= left && column <= right;
}

/** The part of one area that lies in the other. */
export function overlap(one: Area, other: Area): Area | null {
  const area = {
    top: Math.max(one.top, other.top),
    left: Math.max(one.left, other.left),
    bottom: Math.min(one.bottom, other.bottom),
    right: Math.min(one.right, other.right),
  };
  return area.top <= area.bottom && area.left <= area.right ? area : null;
}
