/** What can be said of cells, rows, tables, records and histories as they are read. */
export interface ReadingRules {
  'value-missing': {
    /** Name of the quantity, as a sentence says it. */
    readonly what: string;
  };
}
