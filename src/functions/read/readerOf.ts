import type { Argument } from '../declare/argument.ts';
import { choiceReader } from './choice.ts';
import { readLabels } from './labels.ts';
import { readMembers } from './members.ts';
import { numberReader } from './number.ts';
import type { Reader } from './reader.ts';
import { type Range, isRange } from '../range.ts';
import { seriesReader } from './series.ts';
import { switchReader } from './switch.ts';
import { unitReader } from './unit.ts';

/** The reader of an argument, made once for all calls. Members and series are read from their whole range. */
export function readerOf(argument: Argument): Reader<unknown> {
  switch (argument.kind) {
    case 'number':
      return numberReader(argument);
    case 'choice':
      return choiceReader(argument);
    case 'unit':
      return unitReader(argument);
    case 'members':
      return (cell) => readMembers(argument, asRows(cell));
    case 'switch':
      return switchReader(argument);
    case 'labels':
      return (cell) => readLabels(argument, asRows(cell));
    case 'series': {
      const read = seriesReader(argument);
      return (cell) => read(asRows(cell));
    }
  }
}

function asRows(cell: unknown): Range {
  return isRange(cell) ? cell : [[cell]];
}
