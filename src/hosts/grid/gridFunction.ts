import type { Nullable } from '@univerjs/core';
import type { BaseValueObject, IFunctionNames } from '@univerjs/engine-formula';
import type { ErrorType } from '@univerjs/engine-formula';

type FormulaEngine = Pick<
  typeof import('@univerjs/engine-formula'),
  'ArrayValueObject' | 'BaseFunction' | 'ErrorValueObject' | 'StringValueObject' | 'ValueObjectFactory'
>;

/** An error as a value of a cell. */
export interface CellError {
  readonly code: string;
  readonly message: string;
}

type Value = number | string | CellError;

/** What a worksheet function of the grid runs: cells and ranges (rows of cells) in, a value or rows of values out. */
export interface GridFunction {
  /** As it is typed, with its namespace. */
  readonly name: string;
  readonly least: number;
  readonly most: number;
  readonly run: (...given: unknown[]) => Value | readonly (readonly Value[])[];
}

/** What functions receive for a blank cell. */
export interface BlankCells {
  readonly blank: () => 0 | null;
}

/**
 * A function as the grid's engine takes it. Errors in arguments reach the function, which decides what they mean; an
 * error of its own keeps its message. Nothing is ever thrown into the engine, where it would end the whole calculation.
 */
export function gridFunction(
  engine: FormulaEngine,
  { name, least, most, run }: GridFunction,
  { blank }: BlankCells,
) {
  const { ArrayValueObject, BaseFunction, ErrorValueObject, StringValueObject, ValueObjectFactory } = engine;

  const given = (value: Nullable<BaseValueObject>): unknown => {
    if (!value || value.isNull()) return blank();
    if (value.isError()) {
      const { getErrorType, getErrorContent } = value as InstanceType<FormulaEngine['ErrorValueObject']>;
      return { code: String(getErrorType.call(value)), message: getErrorContent.call(value) };
    }
    return value.getValue();
  };
  const argument = (value: BaseValueObject): unknown => {
    if (!value.isArray()) return value.isNull() ? null : given(value);
    const array = value as InstanceType<FormulaEngine['ArrayValueObject']>;
    const rows = Array.from({ length: array.getRowCount() }, () =>
      Array.from({ length: array.getColumnCount() }, blank as () => unknown),
    );
    array.iterator((cell, row, column) => {
      const cells = rows[row];
      if (cells) cells[column] = given(cell);
    });
    return rows;
  };
  const answered = (value: Value): BaseValueObject => {
    if (typeof value === 'string') return StringValueObject.create(value);
    if (typeof value === 'number') return ValueObjectFactory.create(value);
    return ErrorValueObject.create(value.code as ErrorType, value.message);
  };

  return class extends BaseFunction {
    override minParams = least;
    override maxParams = most;

    constructor() {
      super(name as IFunctionNames);
    }

    override calculate(...variants: BaseValueObject[]): BaseValueObject {
      try {
        const answer = run(...variants.map(argument));
        if (!Array.isArray(answer)) return answered(answer as Value);
        const calculateValueList = (answer as Value[][]).map((row) => row.map(answered));
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
