import type { Nullable } from '@univerjs/core';
import type * as engineFormula from '@univerjs/engine-formula';
import type { BaseValueObject } from '@univerjs/engine-formula';

type FormulaEngine = Pick<
  typeof engineFormula,
  | 'ArrayValueObject'
  | 'ErrorType'
  | 'BaseFunction'
  | 'ErrorValueObject'
  | 'StringValueObject'
  | 'ValueObjectFactory'
>;

/** An error as a value of a cell. */
export interface CellError {
  readonly code: string;
  readonly message: string;
}

type Value = number | string | CellError;
type Answer = Value | readonly (readonly Value[])[];

/** What a worksheet function of the grid runs: cells and ranges (rows of cells) in, a value or rows of values out. */
export interface GridFunction {
  /** As it is typed, with its namespace. */
  readonly name: string;
  readonly least: number;
  readonly most: number;
  readonly run: (...given: unknown[]) => Answer;
}

/** What functions receive for a blank cell. */
export interface BlankCells {
  readonly blank: () => 0 | null;
}

function isRows(answer: Answer): answer is readonly (readonly Value[])[] {
  return Array.isArray(answer);
}

/** Hears what a function gave for the cell it stands in: sheet by its id, row and column from 0. */
export type AnsweredAt = (sheetId: string, row: number, column: number, answer: Answer) => void;

/**
 * A function as the grid's engine takes it. Errors in arguments reach the function, which decides what they mean; an
 * error of its own keeps its message. Nothing is ever thrown into the engine, where it would end the whole calculation.
 */
export function gridFunction(
  engine: FormulaEngine,
  { name, least, most, run }: GridFunction,
  { blank }: BlankCells,
  onAnswer?: AnsweredAt,
) {
  const {
    ErrorType,
    ArrayValueObject,
    BaseFunction,
    ErrorValueObject,
    StringValueObject,
    ValueObjectFactory,
  } = engine;

  const errorType = (code: string) =>
    Object.values(ErrorType).find((type: string) => type === code) ?? ErrorType.VALUE;
  const given = (value: Nullable<BaseValueObject>): unknown => {
    if (!value || value.isNull()) return blank();
    if (value.isError()) {
      const message = value instanceof ErrorValueObject ? value.getErrorContent() : '';
      return { code: String(value.getValue()), message };
    }
    return value.getValue();
  };
  const argument = (value: BaseValueObject): unknown => {
    if (!(value instanceof ArrayValueObject)) return value.isNull() ? null : given(value);
    const rows = Array.from({ length: value.getRowCount() }, () =>
      Array.from({ length: value.getColumnCount() }, blank as () => unknown),
    );
    value.iterator((cell, row, column) => {
      const cells = rows[row];
      if (cells) cells[column] = given(cell);
    });
    return rows;
  };
  const answered = (value: Value): BaseValueObject => {
    if (typeof value === 'string') return StringValueObject.create(value);
    if (typeof value === 'number') return ValueObjectFactory.create(value);
    return ErrorValueObject.create(errorType(value.code), value.message);
  };

  return class extends BaseFunction {
    override minParams = least;
    override maxParams = most;

    constructor() {
      super(name);
    }

    override calculate(...variants: BaseValueObject[]): BaseValueObject {
      try {
        const answer = run(...variants.map(argument));
        onAnswer?.(this.subUnitId ?? '', this.row, this.column, answer);
        if (!isRows(answer)) return answered(answer);
        const calculateValueList = answer.map((row) => row.map(answered));
        return ArrayValueObject.create({
          calculateValueList,
          rowCount: calculateValueList.length,
          columnCount: calculateValueList[0]?.length ?? 0,
          unitId: this.unitId ?? '',
          sheetId: this.subUnitId ?? '',
          row: this.row,
          column: this.column,
        });
      } catch (error) {
        const why = error instanceof Error ? error.message.slice(0, 60) : '';
        return answered({ code: '#VALUE!', message: `Tripdrift failed unexpectedly: ${why}` });
      }
    }
  };
}
