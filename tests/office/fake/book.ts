import type { Area } from '../../../src/cells/sheet.ts';
import { areaAt } from './address.ts';
import { type Content, entered, ErrorValue, FormulaCell } from './entry.ts';
import { accessDenied, HostError, invalidArgument } from './hostError.ts';
import { FakeSheet } from './sheet.ts';

const firstReference = /(?:'((?:[^']|'')+)'!)?(?<!\w)(\$?[A-Z]{1,3}\$?\d+)/;

/** A workbook as the fake Excel holds it. Tests build it and look into it directly. */
export class FakeBook {
  name = 'Harbour.xlsx';
  date1904 = false;
  calculationMode: 'Automatic' | 'Manual' = 'Automatic';
  structureProtected = false;
  /** Whether Excel knows the add-in's worksheet functions. */
  functionsRegistered = true;
  /** Chart sheets: their names are taken, but the interface does not list them. */
  readonly chartSheets: string[] = [];
  /** Defined names. */
  readonly names: string[] = [];
  readonly sheets: FakeSheet[] = [];
  readonly settings = new Map<string, unknown>();
  selection: { sheet: FakeSheet; areas: readonly Area[] } | null = null;
  active: FakeSheet | null = null;
  #nextId = 1;

  /** Adds a sheet with contents from A1 on; texts are texts, `null` is an empty cell. */
  add(name: string, rows: readonly (readonly (Content | null)[])[] = []): FakeSheet {
    const sheet = new FakeSheet(`{${String(this.#nextId++).padStart(8, '0')}}`, name);
    rows.forEach((row, rowIndex) => {
      row.forEach((content, column) => {
        if (content !== null) sheet.setContent(rowIndex + 1, column + 1, content);
      });
    });
    this.sheets.push(sheet);
    this.active ??= sheet;
    return sheet;
  }

  /** By name, in any case, or by id, as `getItem` takes both. */
  find(key: unknown): FakeSheet | undefined {
    const wanted = String(key).toLowerCase();
    return this.sheets.find((sheet) => sheet.name.toLowerCase() === wanted || sheet.id === key);
  }

  addByProgram(name: unknown): FakeSheet {
    if (this.structureProtected) throw accessDenied();
    return this.add(this.#freeName(name));
  }

  /** Formulas follow the name, links do not (from memory). */
  rename(sheet: FakeSheet, name: unknown): void {
    if (this.structureProtected) throw accessDenied();
    const free = this.#freeName(name, sheet);
    const quoted = (one: string): string => `'${one.replaceAll("'", "''")}'!`;
    for (const other of this.sheets)
      other.changeFormulas((formula) => formula.replaceAll(quoted(sheet.name), quoted(free)));
    sheet.name = free;
  }

  #freeName(name: unknown, own?: FakeSheet): string {
    if (typeof name !== 'string' || !isLegalName(name)) throw invalidArgument();
    const others = this.sheets.filter((sheet) => sheet !== own).map((sheet) => sheet.name);
    if ([...this.chartSheets, ...others].some((other) => other.toLowerCase() === name.toLowerCase())) {
      throw new HostError('ItemAlreadyExists', 'A resource with the same name or identifier already exists.');
    }
    return name;
  }

  delete(sheet: FakeSheet): void {
    if (this.structureProtected) throw accessDenied();
    const index = this.sheets.indexOf(sheet);
    const isLastVisible = this.sheets.every((other) => other === sheet || other.visibility !== 'Visible');
    if (index < 0 || isLastVisible) throw new HostError('InvalidOperation');
    this.sheets.splice(index, 1);
  }

  /** Enters something into a cell as a program or a person does. */
  enter(sheet: FakeSheet, row: number, column: number, entry: unknown): void {
    const result = entered(entry, sheet.format(row, column), (formula) => this.evaluate(formula));
    sheet.setContent(row, column, result.content);
    const format = result.format ?? this.#formatOfFirst(result.content, sheet);
    if (format !== undefined && sheet.format(row, column) === 'General') {
      sheet.setFormat(row, column, format);
    }
  }

  /** A formula takes over the format of the first cell it refers to (common practice of spreadsheet programs, no source). */
  #formatOfFirst(content: Content | undefined, sheet: FakeSheet): string | undefined {
    const reference = content instanceof FormulaCell ? firstReference.exec(content.formula) : null;
    const [, name, address = 'A1'] = reference ?? [];
    const referred = name === undefined ? sheet : this.find(name.replaceAll("''", "'"));
    if (!reference || !referred) return undefined;
    const { top, left } = areaAt(address);
    return referred.format(top, left);
  }

  /** Results are not what is tested here: a function of ours gives 1 where it is registered, everything else 0. */
  evaluate(formula: string): FormulaCell['result'] {
    const bare = formula.replace(/"(?:[^"]|"")*"/g, '');
    if (/_xldudf_/i.test(bare)) return new ErrorValue('#NAME?');
    if (!/tripdrift\./i.test(bare)) return 0;
    return this.functionsRegistered ? 1 : new ErrorValue('#NAME?');
  }

  /** Calculates every formula of a sheet anew. */
  calculate(sheet: FakeSheet): void {
    sheet.calculations++;
    const used = sheet.used();
    if (used === null) return;
    for (let row = used.top; row <= used.bottom; row++) {
      for (let column = used.left; column <= used.right; column++) {
        const content = sheet.content(row, column);
        if (!(content instanceof FormulaCell)) continue;
        sheet.setContent(row, column, new FormulaCell(content.formula, this.evaluate(content.formula)));
      }
    }
  }
}

/** Common practice of spreadsheet programs, no public source. */
function isLegalName(name: string): boolean {
  return (
    name.length >= 1 &&
    name.length <= 31 &&
    !/[:\\/?*[\]]|^'|'$/.test(name) &&
    name.toLowerCase() !== 'history'
  );
}
