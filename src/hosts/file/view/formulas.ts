import type { Attributes } from '../read/attributes.ts';
import { shiftedCopies } from '../../formats/shiftFormula.ts';
import { shownFormula } from '../../formats/storedFormula.ts';

interface Master {
  readonly row: number;
  readonly column: number;
  readonly copy: (down: number, right: number) => string;
}

/**
 * The formulas of one sheet's cells as the sheet is read, each in full: of a shared one the first cell has the text, and
 * those that share it come after (ECMA-376 part 1, section 18.3.1.40).
 */
export class SharedFormulas {
  readonly #masters = new Map<string, Master>();

  /** The cell's formula as people type it; undefined where it has none: in a table of what-ifs, or where what it shares is missing. */
  formulaAt(row: number, column: number, attributes: Attributes, text: string): string | undefined {
    const { t: type, si: group } = attributes;
    if (type === 'dataTable') return undefined;
    if (type !== 'shared' || group === undefined) return text === '' ? undefined : shownFormula(text);
    if (text !== '') {
      const shown = shownFormula(text);
      this.#masters.set(group, { row, column, copy: shiftedCopies(shown) });
      return shown;
    }
    const master = this.#masters.get(group);
    return master?.copy(row - master.row, column - master.column);
  }
}
