import {
  CommandType,
  ICommandService,
  type ICommandInfo,
  type IMutation,
  type IMutationInfo,
  type Injector,
  type IRange,
  IUniverInstanceService,
  type Nullable,
  UniverInstanceType,
  type Workbook,
  type Worksheet,
} from '@univerjs/core';
import {
  EffectRefRangId,
  handleDefaultRangeChangeWithEffectRefCommands,
  SheetInterceptorService,
} from '@univerjs/sheets';
import { mergedRanges } from '../../hosts/grid/frame.ts';
import { areaOf } from '../../hosts/grid/read/readWorkbook.ts';
import { type KeptBeside, type Move, movedBeside } from './keptBeside.ts';
import { movedFormula } from './movedFormula.ts';

interface SetBeside {
  readonly unitId: string;
  readonly subUnitId: string;
  readonly kept: KeptBeside;
}

/** Steps of the grid that move cells. */
const moving: ReadonlySet<string> = new Set(Object.values(EffectRefRangId));

const setBeside: IMutation<SetBeside> = {
  id: 'bench.mutation.set-beside-sheet',
  type: CommandType.MUTATION,
  handler: (accessor, { unitId, subUnitId, kept }) => {
    const sheet = openBook(accessor.get(IUniverInstanceService), unitId)?.getSheetBySheetId(subUnitId);
    if (!sheet) return false;
    sheet.getConfig().custom = { ...kept };
    return true;
  },
};

/**
 * Moves what is kept beside sheets with every step that moves cells, as part of that step, so that Undo brings it back
 * where it was.
 */
export function keepInPlace(injector: Injector): void {
  const instances = injector.get(IUniverInstanceService);
  injector.get(ICommandService).registerCommand(setBeside);
  injector.get(SheetInterceptorService).interceptCommand({
    getMutations: (command) => {
      const book = openBook(instances);
      if (!moving.has(command.id) || !book) return { redos: [], undos: [] };
      const changes = book.getSheets().flatMap((sheet) => {
        const before: KeptBeside = { ...sheet.getConfig().custom };
        const after = movedBeside(before, moveOf(injector, command, book, sheet));
        const set = (kept: KeptBeside): IMutationInfo => ({
          id: setBeside.id,
          params: { unitId: book.getUnitId(), subUnitId: sheet.getSheetId(), kept } satisfies SetBeside,
        });
        return JSON.stringify(before) === JSON.stringify(after)
          ? []
          : [{ redo: set(after), undo: set(before) }];
      });
      return { redos: changes.map(({ redo }) => redo), undos: changes.map(({ undo }) => undo) };
    },
  });
}

function openBook(instances: IUniverInstanceService, unitId?: string): Nullable<Workbook> {
  const kind = UniverInstanceType.UNIVER_SHEET;
  return unitId === undefined
    ? instances.getCurrentUnitOfType<Workbook>(kind)
    : instances.getUnit<Workbook>(unitId, kind);
}

/** The sheet on which a step moves cells: the one in front where the step does not say. */
function movedSheet({ params }: ICommandInfo, book: Workbook): Worksheet {
  const { subUnitId, fromSubUnitId } = (params ?? {}) as { subUnitId?: string; fromSubUnitId?: string };
  return book.getSheetBySheetId(subUnitId ?? fromSubUnitId ?? '') ?? book.getActiveSheet();
}

/** What a step does to the areas of a sheet and to references in formulas that stand on it. */
function moveOf(injector: Injector, command: ICommandInfo, book: Workbook, sheet: Worksheet): Move {
  const changed = movedSheet(command, book);
  const after = (range: IRange, on: Nullable<Worksheet>): IRange | null =>
    on === changed ? handleDefaultRangeChangeWithEffectRefCommands(range, command) : range;
  return {
    area: (area) => {
      const [range] = mergedRanges([area]);
      const place = range ? after(range, sheet) : null;
      return place && areaOf(place);
    },
    formula: (formula) =>
      movedFormula(injector, formula, (range, name) =>
        after(range, name === '' ? sheet : book.getSheetBySheetName(name)),
      ),
  };
}
