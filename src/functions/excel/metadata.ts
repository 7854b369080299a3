import { catalogue } from '../catalogue.ts';
import { optional } from '../declare/argument.ts';
import type { WorksheetFunction } from '../declare/declare.ts';

/**
 * The text of `functions.json`, which tells Excel the names, descriptions and arguments. `help` is the address of the
 * page with the function reference; each function points to its own heading there.
 *
 * Every argument is declared as a matrix of any type with errors let through, so that ranges, text and errors reach
 * the functions' own checks and messages. Custom data types are left off: they would arrive as objects.
 */
export function functionsJson(help: string): string {
  const functions = catalogue.map((declared) => metadataOf(declared, help));
  return `${JSON.stringify({ allowErrorForDataTypeAny: true, functions }, undefined, 2)}\n`;
}

function metadataOf({ id, description, arguments: declared }: WorksheetFunction, help: string) {
  return {
    id,
    name: id,
    description,
    helpUrl: `${help}#${id.toLowerCase()}`,
    parameters: declared.map((argument) => ({
      name: argument.name,
      description: argument.description,
      type: 'any',
      dimensionality: 'matrix',
      ...(optional(argument) ? { optional: true } : {}),
    })),
    result: { type: 'any', dimensionality: 'matrix' },
  };
}
