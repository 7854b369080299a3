import { optional } from './declare/argument.ts';
import type { WorksheetFunction } from './declare/declare.ts';

/** How a function is called, optional arguments in square brackets: `ZONE(displacement, speed, [unit])`. */
export function signature({ id, arguments: declared }: WorksheetFunction): string {
  const names = declared.map((argument) => (optional(argument) ? `[${argument.name}]` : argument.name));
  return `${id}(${names.join(', ')})`;
}
