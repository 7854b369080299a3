import { BooleanNumber, type Ctor } from '@univerjs/core';
import * as engine from '@univerjs/engine-formula';
import { callable } from '../../functions/call/callable.ts';
import { NAMESPACE, catalogue } from '../../functions/catalogue.ts';
import { optional } from '../../functions/declare/argument.ts';
import {
  type AnsweredAt,
  type BlankCells,
  type GridFunction,
  gridFunction,
} from '../../hosts/grid/gridFunction.ts';

type Registered = [Ctor<engine.BaseFunction>, string];

/** Every worksheet function, ready to be registered with the grid's engine. */
export function gridFunctions(blankCells: BlankCells, onAnswer?: AnsweredAt): Registered[] {
  const ours = catalogue.map((declared): Registered => {
    const name = `${NAMESPACE}.${declared.id}`;
    const least = declared.arguments.filter((argument) => !optional(argument)).length;
    const run = callable(declared);
    const most = declared.arguments.length;
    return [gridFunction(engine, { name, least, most, run }, blankCells, onAnswer), name];
  });
  return [...ours, [gridFunction(engine, noPicture, blankCells, onAnswer), noPicture.name]];
}

/** In place of the engine's own, which would ask the address for the picture: nothing leaves the page. */
const noPicture: GridFunction = {
  name: 'IMAGE',
  least: 1,
  most: 5,
  run: () => ({
    code: '#VALUE!',
    message: 'IMAGE is not worked out here: pictures are not loaded from addresses.',
  }),
};

/** What the grid shows of the functions while a formula is typed. */
export const functionHelp: engine.IFunctionInfo[] = catalogue.map((declared) => ({
  functionName: `${NAMESPACE}.${declared.id}`,
  functionType: engine.FunctionType.User,
  description: `${declared.description} Result: ${declared.resultDescription}`,
  abstract: declared.description,
  functionParameter: declared.arguments.map((argument) => ({
    name: argument.name,
    detail: argument.description,
    example: '',
    require: optional(argument) ? BooleanNumber.FALSE : BooleanNumber.TRUE,
    repeat: BooleanNumber.FALSE,
  })),
}));
