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
import {
  deserializeRangeWithSheet,
  ErrorType,
  generateStringWithSequence,
  LexerTreeBuilder,
  sequenceNodeType,
  serializeRange,
  serializeRangeToRefString,
} from '@univerjs/engine-formula';
import type { Area, SheetTable } from '../../cells/sheet.ts';
import type { ViewRule } from '../../hosts/file/view/types.ts';

/** What the grid keeps beside the cells of a sheet. */
interface KeptBeside {
  readonly tables?: readonly SheetTable[];
  readonly rules?: readonly ViewRule[];
}

/** How one step moves things of a sheet. */
interface Move {
  /** Where an area lies afterwards; `null` where nothing is left of it. */
  readonly area: (area: Area) => Area | null;
  /** A formula, without `=`, with its references where they lead afterwards. */
  readonly formula: (formula: string) => string;
}

/** Where a range of a sheet lies after a step; `null` where nothing is left of it. The empty name is the formula's own sheet. */
type MovedRange = (range: IRange, sheetName: string) => IRange | null;

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

/** A formula, without `=`, whose references lead to where their cells are after a step; `#REF!` where those are gone. */
function movedFormula(injector: Injector, formula: string, moved: MovedRange): string {
  const nodes = injector.get(LexerTreeBuilder).sequenceNodesBuilder(`=${formula}`);
  if (!nodes) return formula;
  const after = nodes.map((node) => {
    if (typeof node === 'string' || node.nodeType !== sequenceNodeType.REFERENCE) return node;
    const reference = deserializeRangeWithSheet(node.token);
    if (reference.unitId !== '') return node;
    const range = moved(reference.range, reference.sheetName);
    if (range === reference.range) return node;
    const { startRow = 0, endRow = 0, startColumn = 0, endColumn = 0 } = range ?? {};
    const place = { ...reference.range, startRow, endRow, startColumn, endColumn };
    const token =
      range === null
        ? ErrorType.REF
        : reference.sheetName === ''
          ? serializeRange(place)
          : serializeRangeToRefString({ ...reference, range: place });
    return { ...node, token };
  });
  return generateStringWithSequence(after);
}

/**
 * What is kept beside a sheet after rows, columns or cells moved. A table whose header row is gone is none any more: its
 * cells are then read as a plain range.
 */
function movedBeside<Kept extends KeptBeside>(kept: Kept, move: Move): Kept {
  const { tables, rules } = kept;
  return {
    ...kept,
    ...(tables && { tables: tables.flatMap((table) => movedTable(table, move)) }),
    ...(rules && { rules: rules.flatMap((rule) => movedRule(rule, move)) }),
  };
}

function movedTable(table: SheetTable, move: Move): SheetTable[] {
  const { area, headerRow, totalsRow } = table;
  const moved = move.area(area);
  const left = (row: number): boolean => move.area({ ...area, top: row, bottom: row }) !== null;
  if (!moved || (headerRow && !left(area.top))) return [];
  return [{ ...table, area: moved, totalsRow: totalsRow && left(area.bottom) }];
}

function movedRule(rule: ViewRule, move: Move): ViewRule[] {
  const areas = rule.areas.flatMap((area) => move.area(area) ?? []);
  return areas.length === 0 ? [] : [{ ...rule, areas, formulas: rule.formulas.map(move.formula) }];
}
