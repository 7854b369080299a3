import { cellAddress } from '../cells/address.ts';
import { oneLine } from '../hosts/file/zip/refused.ts';
import { shownFormula } from '../hosts/formats/storedFormula.ts';
import type { LeftOut } from './leftOut.ts';
import type { SharedCopy, UnknownResult } from './types.ts';

const things: Readonly<Record<string, string>> = {
  cfRule: 'A conditional format of',
  dataValidation: 'A rule for input in',
  sparkline: 'A sparkline in',
  calculatedColumnFormula: 'The formula that new rows get in the table column',
  totalsRowFormula: 'The formula of the totals row in the table column',
};

/** How many formulas were replaced. */
export function countNote({ values, native }: SharedCopy['replaced'], unknown = 0): string {
  if (values + native + unknown === 0) return 'No cell has a formula with a Tripdrift function.';
  const parts = [
    ...(values > 0
      ? [
          `${formulas(values)} became ${values === 1 ? 'its value' : 'values'}, kept in ${values === 1 ? 'a note' : 'notes'}`,
        ]
      : []),
    ...(native > 0 ? [`${formulas(native)} became native ones`] : []),
    ...(unknown > 0 ? [`${formulas(unknown)} could not be worked out`] : []),
  ];
  return `${parts.join('; ')}.`;
}

/** The cells that keep what the file had, those of one sheet with one reason in one sentence. */
export function unknownNotes(unknown: readonly UnknownResult[]): readonly string[] {
  const alike = new Map<string, UnknownResult[]>();
  for (const one of unknown) {
    const key = `${one.place.sheet}\n${one.why}`;
    alike.set(key, [...(alike.get(key) ?? []), one]);
  }
  return [...alike.values()].map((cells) => {
    const addresses = cells.map(({ place: { row, column } }) => cellAddress(row, column)).join(', ');
    const [{ place, why } = { place: { sheet: '' }, why: '' }] = cells;
    const many = cells.length > 1;
    return `Sheet “${oneLine(place.sheet)}”, ${many ? 'cells' : 'cell'} ${addresses}: the result could not be worked out (${why}); the copy has what the file had. Open the workbook where Tripdrift is installed, let it calculate, save it, and make the copy again.`;
  });
}

function formulas(count: number): string {
  return `${count.toLocaleString('en')} ${count === 1 ? 'formula' : 'formulas'}`;
}

/** What is not in the copy, and where it was. */
export function leftOutNote(sheet: string, { kind, where, formula }: LeftOut): string {
  const thing = things[kind] ?? 'Something for';
  return `Sheet “${oneLine(sheet)}”: ${lower(thing)} ${oneLine(where, 60)} can hold no value and is left out: ${told(formula)}.`;
}

export function nameNote(name: string, formula: string): string {
  return `The name ${oneLine(name, 60)} works with a Tripdrift function and leads nowhere in the copy: ${told(formula)}.`;
}

export function whatIfNote(sheet: string, areas: readonly string[]): string {
  return `Sheet “${oneLine(sheet)}”: the table of what-ifs in ${areas.join(', ')} has its values, as it may rest on cells that do not follow any more.`;
}

export function threadNote(sheet: string, address: string, text: string): string {
  return `Sheet “${oneLine(sheet)}”, cell ${address} has a thread of comments, beside which programs may not show the note: ${oneLine(text, 300)}`;
}

function told(stored: string): string {
  return `=${oneLine(shownFormula(stored), 200)}`;
}

function lower(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}
