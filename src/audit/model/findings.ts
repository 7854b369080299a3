export type Severity = 'critical' | 'warning' | 'note';

/** Where in the workbook something stands: row and column as the spreadsheet shows them. */
export interface Place {
  readonly sheet: string;
  readonly row: number;
  readonly column: string;
}

export interface Finding extends Place {
  /** Name of the rule that found it, stable from version to version. */
  readonly rule: string;
  readonly severity: Severity;
  readonly message: string;
}

/** A row of a sheet. */
export interface RowPlace {
  readonly sheet: string;
  readonly row: number;
}

export interface Problem extends Place {
  readonly rule: string;
  readonly severity: Severity;
  readonly message: string;
}
