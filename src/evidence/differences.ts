import type { CellDifference } from './verification.ts';

/** Cells that differ are counted, and the first of them kept. */
export class Differences {
  /** How many are kept. */
  static readonly most = 20;
  readonly #kept: CellDifference[] = [];
  #count = 0;

  get count(): number {
    return this.#count;
  }

  get cells(): readonly CellDifference[] {
    return this.#kept;
  }

  /** How many were not kept. */
  get more(): number {
    return this.#count - this.#kept.length;
  }

  add(difference: CellDifference): void {
    this.#count++;
    if (this.#kept.length < Differences.most) this.#kept.push(difference);
  }
}
