import type { Injector, IRange } from '@univerjs/core';
import {
  deserializeRangeWithSheet,
  ErrorType,
  generateStringWithSequence,
  LexerTreeBuilder,
  sequenceNodeType,
  serializeRange,
  serializeRangeToRefString,
} from '@univerjs/engine-formula';

/** Where a range of a sheet lies after a step; `null` where nothing is left of it. The empty name is the formula's own sheet. */
export type MovedRange = (range: IRange, sheetName: string) => IRange | null;

/** A formula, without `=`, whose references lead to where their cells are after a step; `#REF!` where those are gone. */
export function movedFormula(injector: Injector, formula: string, moved: MovedRange): string {
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
