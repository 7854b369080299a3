import { columnOrder, comparisons, machineNames } from './order.ts';
import { otherColumns, otherSheets } from './decoys.ts';
import type { Dimension } from './dimension.ts';
import { cells, numberForm, optionalBlanks, rows, twice } from './lines.ts';
import { machinePlace, nearTags, runningNumbers, tags } from './names.ts';
import { frame, headerText, hidden, rivals } from './old.ts';
import { detection, kinds, quantities, setpointForm, setpointWords, units } from './quantities.ts';
import { headerDepth, roleWords, rounds } from './rounds.ts';
import { structure } from './structure.ts';
import { unitPlaces } from './unitPlaces.ts';

/** Decided before there is a table: what the plant has, and how it speaks. */
export const beforeTables: readonly Dimension[] = [
  machinePlace,
  tags,
  kinds,
  units,
  detection,
  setpointForm,
  setpointWords,
  quantities,
];

/** The tables, and what is done to them one after the other. */
export const onTables: readonly Dimension[] = [
  structure,
  rounds,
  headerDepth,
  roleWords,
  comparisons,
  headerText,
  unitPlaces,
  rows,
  optionalBlanks,
  cells,
  twice,
  numberForm,
  nearTags,
  hidden,
  rivals,
  machineNames,
  runningNumbers,
  otherColumns,
  columnOrder,
  otherSheets,
  frame,
];

export const dimensions: readonly Dimension[] = [...beforeTables, ...onTables];
