import { NAMESPACE, catalogue } from './catalogue.ts';
import { optional } from './declare/argument.ts';
import type { WorksheetFunction } from './declare/declare.ts';

const INTRODUCTION = `All functions take single cells or ranges. Ranges are spread like a spreadsheet spreads them: one result for each
place, one row or one column serves all others, and a place that a range does not reach shows \`#N/A\`. A place where all
ranges are blank stays blank. One formula for a whole column is much faster than one formula a row. Square brackets mark
arguments that may be left out.

Sensitivities are in one unit, whichever it is; displacements likewise. A number stored as text counts in a single cell
and is refused in a range. \`#VALUE!\` and \`#N/A\` carry a reason: point at the cell to read it. A blank cell reaches a
function as 0 in some versions of Excel, so 0 is refused wherever it has no meaning of its own.

The points of a calibration record, and the parts of a budget, are read together: rows or columns of as many cells each,
paired by their place, in any order of the gaps. A place that is blank in all of them is left out.`;

/** The function reference as Markdown, with its heading: one section a function, made from the catalogue. */
export function referenceMarkdown(): string {
  return ['# Worksheet functions', INTRODUCTION, ...catalogue.map(section)].join('\n\n');
}

function section(declared: WorksheetFunction): string {
  const rows = declared.arguments.map(
    (argument) =>
      `| \`${argument.name}\` | ${optional(argument) ? 'optional' : ''} | ${cell(argument.description)} |`,
  );
  const shown = declared.example.result.replaceAll('\t', '` and `');
  return [
    `## ${declared.id}`,
    '',
    `\`${NAMESPACE}.${signature(declared)}\``,
    '',
    `${declared.description} Result: ${lowerFirst(declared.resultDescription)}`,
    '',
    '| argument | | |',
    '|---|---|---|',
    ...rows,
    '',
    `Example: \`${declared.example.formula}\` gives \`${shown}\`.`,
  ].join('\n');
}

/** A vertical bar would end the cell. */
function cell(text: string): string {
  return text.replaceAll('|', '\\|');
}

/** "Low and high" → "low and high", but "A, B" stays. */
function lowerFirst(text: string): string {
  return /^[A-Z][a-z]/.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text;
}

/** How a function is called, optional arguments in square brackets: `ZONE(displacement, speed, [unit])`. */
export function signature({ id, arguments: declared }: WorksheetFunction): string {
  const names = declared.map((argument) => (optional(argument) ? `[${argument.name}]` : argument.name));
  return `${id}(${names.join(', ')})`;
}
