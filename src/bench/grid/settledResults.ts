import { ICommandService, type ICommandInfo, type Injector, type IUnitRange } from '@univerjs/core';
import {
  FormulaExecutedStateType,
  IActiveDirtyManagerService,
  ICalculateFormulaService,
  SetFormulaCalculationStartMutation,
} from '@univerjs/engine-formula';
import {
  adjustRangeOnMutation,
  ClearSelectionFormatCommand,
  SetBorderCommand,
  SetRangeValuesMutation,
  SetStyleCommand,
} from '@univerjs/sheets';

/** What the grid's engine keeps to itself of a calculation. */
interface CalculationState {
  execute: (order: never) => Promise<void>;
  _executeStep: () => Promise<unknown>;
  readonly _executionCompleteListener$: {
    next: (result: { readonly functionsExecutedState: FormulaExecutedStateType }) => void;
  };
}

interface SheetPlace {
  readonly unitId: string;
  readonly subUnitId: string;
}

/** Steps that change how cells look, not what stands in them. */
const styling: ReadonlySet<string | undefined> = new Set([
  SetStyleCommand.id,
  SetBorderCommand.id,
  ClearSelectionFormatCommand.id,
]);

/**
 * Has results stand only where they belong. A calculation runs beside the user: one that began before something changed
 * would still write what it found to where its formulas stood then, over cells that meanwhile moved there. Its results are
 * dropped, and the next calculation takes every change since the last results that were shown, where its cells lie by then.
 * Returns whether all that was changed is calculated. It reaches into version 0.25.1 of the engine.
 */
export function settleResults(injector: Injector): () => boolean {
  const commands = injector.get(ICommandService);
  const conversions = injector.get(IActiveDirtyManagerService);
  const engine = injector.get(ICalculateFormulaService) as unknown as CalculationState;
  let changes = 0;
  let shown = 0;
  /** Cells whose change is in no result shown yet: those of no calculation so far, and those of the one that runs. */
  let waiting: IUnitRange[] = [];
  let running: IUnitRange[] = [];

  commands.onCommandExecuted((command, options) => {
    const conversion = conversions.get(command.id);
    if (!conversion || calculatesNothing(command, options?.onlyLocal)) return;
    changes++;
    waiting = movedBy(command, waiting);
    running = movedBy(command, running);
    waiting.push(...(conversion.getDirtyData(command).dirtyRanges ?? []));
  });
  commands.beforeCommandExecuted(({ id, params }) => {
    if (id !== SetFormulaCalculationStartMutation.id) return;
    const order = params as { dirtyRanges?: IUnitRange[] };
    running = [...running, ...waiting];
    waiting = [];
    order.dirtyRanges = [...(order.dirtyRanges ?? []), ...running];
  });

  /** For each calculation that was begun, one after the other, how much had changed by then. */
  const begun: number[] = [];
  let begunAt = 0;
  const execute = engine.execute.bind(engine);
  engine.execute = (order) => {
    begun.push(changes);
    return execute(order);
  };
  const calculate = engine._executeStep.bind(engine);
  engine._executeStep = () => {
    begunAt = begun.shift() ?? begunAt;
    return calculate();
  };
  const results = engine._executionCompleteListener$;
  const give = results.next.bind(results);
  results.next = (result) => {
    const { functionsExecutedState: state } = result;
    const whole =
      state === FormulaExecutedStateType.SUCCESS || state === FormulaExecutedStateType.NOT_EXECUTED;
    if (whole && begunAt === changes) {
      shown = changes;
      running = [];
    }
    const outrun = state === FormulaExecutedStateType.SUCCESS && begunAt !== changes;
    give(outrun ? { ...result, functionsExecutedState: FormulaExecutedStateType.STOP_EXECUTION } : result);
  };
  return () => shown === changes;
}

/** Whether the grid begins no calculation for a step that could change cells. */
function calculatesNothing({ id, params }: ICommandInfo, local: boolean | undefined): boolean {
  if (id !== SetRangeValuesMutation.id) return false;
  return local === true || styling.has((params as { trigger?: string }).trigger);
}

/** Where cells lie after a step; those that are gone are left out. */
function movedBy(command: ICommandInfo, places: readonly IUnitRange[]): IUnitRange[] {
  const { unitId, subUnitId } = (command.params ?? {}) as Partial<SheetPlace>;
  return places.flatMap((place) => {
    if (place.unitId !== unitId || place.sheetId !== subUnitId) return place;
    const range = adjustRangeOnMutation(place.range, command as never);
    return range ? { ...place, range } : [];
  });
}
