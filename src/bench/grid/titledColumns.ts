/** A column beyond the last one that any sheet has. */
const beyond = 1_000_000;

/**
 * Columns of a table, counted from 0, by their titles in capital or small letters. A title that is none of the table's leads
 * beyond the sheet, which the engine shows as an error; by itself it takes the column left of the table.
 */
export class TitledColumns extends Map<string, number> {
  override get(title: string): number {
    return super.get(title.toLowerCase()) ?? beyond;
  }

  override has(title: string): boolean {
    return super.has(title.toLowerCase());
  }

  override set(title: string, column: number): this {
    return super.set(title.toLowerCase(), column);
  }
}
