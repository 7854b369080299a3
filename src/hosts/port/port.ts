import type { Cell } from '../../cells/cell.ts';
import type { Area, Workbook } from '../../cells/sheet.ts';
import type { SheetModel } from '../../sheets/model.ts';

/** Stops long work between two of its steps; the workbook is then as it was before. */
export interface Cancel {
  readonly cancelled: boolean;
}

/** Hears how much of long work is done, from 0 to 1. */
export type OnProgress = (part: number) => void;

export interface Selection {
  readonly sheet: string;
  readonly area: Area;
  /** Cells of the selection row by row; at most the first 1,000 cells. */
  readonly cells: readonly (readonly Cell[])[];
}

/** An area of a sheet. */
export interface SheetArea {
  readonly sheet: string;
  readonly area: Area;
}

/** One cell, row and column counted from 1. */
export interface CellPlace {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

export interface WrittenSheet {
  readonly wanted: string;
  readonly given: string;
}

/** The host could not do what was asked: `message` says in plain words what happened, why, and what to do next. */
export class HostRefused extends Error {
  override readonly name = 'HostRefused';
}

/** Colours of the host's theme, or `null` where it has none and the page follows the system. */
export interface HostTheme {
  readonly dark: boolean;
  readonly background: string;
  readonly text: string;
}

/**
 * What the pane needs of the program that holds the workbook. Excel is one such program, the bench another; the pane
 * knows neither. Everything a host refuses comes as HostRefused.
 */
export interface WorkbookPort {
  /** Reads every sheet that holds something, in as few round trips as its size allows. */
  readWorkbook(onProgress?: OnProgress, cancel?: Cancel): Promise<Workbook>;
  readSelection(): Promise<Selection>;
  /** Shows a row of a sheet and selects its cells from one column to another. */
  selectRow(sheet: string, row: number, fromColumn: number, toColumn: number): Promise<void>;
  selectCell(place: CellPlace): Promise<void>;
  /**
   * Brings an area's sheet to the front and points at the area until the next call; `null`: at nothing any more. No cell and
   * no format is changed: a host that can't mark an area selects it. Refused where the sheet is gone or hidden.
   */
  pointAt(place: SheetArea | null): Promise<void>;
  /** Calls back after another area is selected, by the user or the pane; the returned function stops it. */
  onSelect(listener: (place: SheetArea) => void): Promise<() => void>;
  /** Puts a formula into the first selected cell; refused where that cell is filled, unless `overwrite` is given. */
  insertFormula(formula: string, overwrite?: boolean): Promise<CellPlace>;
  /**
   * Adds result sheets behind the workbook's own, under free names. All or none: where one can't be finished, or the
   * work is cancelled, those already added are taken away again.
   */
  writeSheets(
    sheets: readonly SheetModel[],
    onProgress?: OnProgress,
    cancel?: Cancel,
  ): Promise<readonly WrittenSheet[]>;
  /**
   * Writes result sheets in place of those of these names: the new ones as `writeSheets` does, then the old ones are deleted and
   * their names given on. Where the new ones can't be written the old ones stay as they are.
   */
  replaceSheets(
    going: readonly string[],
    sheets: readonly SheetModel[],
    onProgress?: OnProgress,
    cancel?: Cancel,
  ): Promise<readonly WrittenSheet[]>;
  /** Cells of other sheets whose formulas refer to these sheets or to tables on them. */
  referencesTo(sheets: readonly string[]): Promise<readonly CellPlace[]>;
  /** Deletes sheets, all or none; names that no sheet has are passed over. Refused where no other sheet would be seen. */
  removeSheets(sheets: readonly string[]): Promise<void>;
  /** A small document of the add-in's own that travels with the workbook; `null` where there is none. */
  readSetting(key: string): Promise<unknown>;
  writeSetting(key: string, value: unknown): Promise<void>;
  /** Calls back after the user or another program changes cells; the returned function stops it. */
  onChange(listener: (sheet: string) => void): Promise<() => void>;
  /** Cells with a formula of ours that shows `#NAME?`, or whose name is still the stored form. */
  findBrokenFormulas(): Promise<readonly CellPlace[]>;
  /** Enters the formulas of such cells anew; the number of cells. */
  repairFormulas(places: readonly CellPlace[]): Promise<number>;
  /** Calculates every formula of ours anew; the number of cells. */
  recalculate(): Promise<number>;
  /** Whether the worksheet functions are registered with the host; `null` where it can't be told. */
  functionsReady(): Promise<boolean | null>;
  theme(): HostTheme | null;
  onTheme(listener: (theme: HostTheme | null) => void): void;
}
