import type { ShownText } from '../../../cells/sheet.ts';

/** Texts that number formats show, gathered cell by cell into runs down each column. */
export class ShownRuns {
  readonly #done: ShownText[] = [];
  readonly #open = new Map<number, { text: string; top: number; bottom: number }>();

  /** A number in a row and column, from 1, with the text that its format shows. */
  add(row: number, column: number, text: string): void {
    const run = this.#open.get(column);
    if (run?.text === text && row === run.bottom + 1) {
      run.bottom = row;
      return;
    }
    if (run) this.#close(column, run);
    this.#open.set(column, { text, top: row, bottom: row });
  }

  /** All runs; nothing may be added afterwards. */
  finish(): readonly ShownText[] {
    for (const [column, run] of this.#open) this.#close(column, run);
    this.#open.clear();
    return this.#done;
  }

  #close(column: number, { text, top, bottom }: { text: string; top: number; bottom: number }): void {
    this.#done.push({ text, area: { top, left: column, bottom, right: column } });
  }
}
