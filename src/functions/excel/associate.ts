import { type Callable, callable } from '../call/callable.ts';
import type { Result, Single } from '../call/result.ts';
import { catalogue } from '../catalogue.ts';
import type { ErrorCode } from '../functionError.ts';
import { FunctionError } from '../functionError.ts';

type ExcelErrorCode = 'invalidValue' | 'invalidNumber' | 'notAvailable' | 'divisionByZero' | 'nullReference';

/** The part of Excel's `CustomFunctions` object that the functions need. */
export interface CustomFunctionsLike {
  associate(id: string, run: (...given: unknown[]) => unknown): void;
  readonly Error: new (code: never, message?: string) => globalThis.Error;
  readonly ErrorCode: Readonly<Record<ExcelErrorCode, unknown>>;
}

/** #NAME? and #REF! can be received but not returned. */
const EXCEL_CODES: Readonly<Record<ErrorCode, ExcelErrorCode>> = {
  '#VALUE!': 'invalidValue',
  '#NUM!': 'invalidNumber',
  '#N/A': 'notAvailable',
  '#DIV/0!': 'divisionByZero',
  '#NULL!': 'nullReference',
  '#NAME?': 'invalidValue',
  '#REF!': 'invalidValue',
};

/**
 * Registers every worksheet function with Excel. To be called once, as soon as `CustomFunctions` exists. `onFirstCall`
 * hears when Excel calls one for the first time: a sign that they are registered.
 */
export function associateAll(excel: CustomFunctionsLike, onFirstCall: () => void = () => undefined): void {
  let called = false;
  for (const declared of catalogue) {
    const run = bound(callable(declared), excel);
    excel.associate(declared.id, (...given) => {
      if (!called) {
        called = true;
        onFirstCall();
      }
      return run(...given);
    });
  }
}

/** Results are always rows of cells, as declared; an error for the whole call is thrown, since only then its text stays. */
function bound(call: Callable, excel: CustomFunctionsLike): (...given: unknown[]) => unknown[][] {
  const toExcel = ({ code, message }: FunctionError) =>
    new excel.Error(
      excel.ErrorCode[EXCEL_CODES[code]] as never,
      message === '' && EXCEL_CODES[code] === 'invalidValue'
        ? `An argument holds ${code}: correct that cell.`
        : message,
    );
  const cell = (value: Single) => (value instanceof FunctionError ? toExcel(value) : value);

  return (...given) => {
    let result: Result;
    try {
      result = call(...given);
    } catch (error) {
      const why = error instanceof Error ? error.message.slice(0, 60) : '';
      throw toExcel(new FunctionError('#VALUE!', `Tripdrift failed unexpectedly: ${why}`));
    }
    if (result instanceof FunctionError) throw toExcel(result);
    return typeof result === 'object' ? result.map((row) => row.map(cell)) : [[result]];
  };
}
